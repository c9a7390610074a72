package slackwater.simulator.referee;

import java.util.List;
import java.util.stream.IntStream;
import slackwater.model.Level;
import slackwater.model.Rig;

/** A waveform drawn by hand: changes in time order, with the looks that the referee itself asked for in between. */
final class Run {
    final Rig rig;
    final FakeYard yard;
    final Referee referee;

    private Run(final Rig rig, final Referee referee) {
        this.rig = rig;
        this.referee = referee;
        yard = new FakeYard(rig);
    }

    /** All outputs at rest, all inputs inactive, the stop loop closed; not yet looked at. */
    static Run dark(final TestRig testRig) {
        final Rig rig = testRig.build();
        final Run run = new Run(rig, Referee.of(rig));
        for (int output = 0; output < rig.outputs().size(); output++) {
            run.yard.isOutputHigh[output] = rig.outputs().get(output).energisedLevel() == Level.LOW;
        }
        for (int input = 0; input < rig.inputs().size(); input++) {
            run.setInput(
                    rig.inputs().get(input).name(),
                    rig.inputs().get(input).name().equals("stop-loop"));
        }
        return run;
    }

    /** The same, looked at and armed at time 0. */
    static Run armed(final TestRig testRig) {
        final Run run = dark(testRig);
        run.look(0);
        run.referee.act(0, new Act.ScheduleOpens());
        return run;
    }

    private int output(final String name) {
        return IntStream.range(0, rig.outputs().size())
                .filter(index -> rig.outputs().get(index).name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private int input(final String name) {
        return IntStream.range(0, rig.inputs().size())
                .filter(index -> rig.inputs().get(index).name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    void setOutput(final String name, final boolean isEnergised) {
        final boolean isHighEnergised =
                rig.outputs().get(output(name)).energisedLevel().isHigh();
        yard.isOutputHigh[output(name)] = isEnergised == isHighEnergised;
        yard.isPowered[output(name)] = isEnergised;
    }

    void setInput(final String name, final boolean isActive) {
        for (int controller = 0; controller < rig.controllers().size(); controller++) {
            setInput(name, controller, isActive);
        }
    }

    void setInput(final String name, final int controller, final boolean isActive) {
        yard.isInputHigh[input(name)][controller] = !isActive;
    }

    Run on(final String name, final long atNs) {
        idle(atNs - 1);
        setOutput(name, true);
        return look(atNs);
    }

    Run off(final String name, final long atNs) {
        idle(atNs - 1);
        setOutput(name, false);
        return look(atNs);
    }

    Run pulse(final String name, final long fromNs, final long untilNs) {
        return on(name, fromNs).off(name, untilNs);
    }

    Run active(final String name, final long atNs) {
        idle(atNs - 1);
        setInput(name, true);
        return look(atNs);
    }

    Run inactive(final String name, final long atNs) {
        idle(atNs - 1);
        setInput(name, false);
        return look(atNs);
    }

    Run act(final Act act, final long atNs) {
        idle(atNs - 1);
        referee.act(atNs, act);
        return this;
    }

    Run hot(final String name, final boolean isHot, final long atNs) {
        idle(atNs - 1);
        yard.isHot[output(name)] = isHot;
        return look(atNs);
    }

    Run water(final String name, final boolean hasWater, final long atNs) {
        idle(atNs - 1);
        yard.hasWater[output(name)] = hasWater;
        return look(atNs);
    }

    Run fluid(final String name, final boolean hasFluid, final long atNs) {
        idle(atNs - 1);
        yard.hasFluid[output(name)] = hasFluid;
        return look(atNs);
    }

    Run people(final String name, final int count, final long atNs) {
        idle(atNs - 1);
        yard.people[output(name)] = count;
        return look(atNs);
    }

    Run moves(final String name, final double energyJ, final long atNs) {
        idle(atNs - 1);
        yard.isMoving[output(name)] = true;
        yard.energyJ[output(name)] = energyJ;
        return look(atNs);
    }

    Run stands(final String name, final long atNs) {
        idle(atNs - 1);
        yard.isMoving[output(name)] = false;
        yard.energyJ[output(name)] = 0;
        return look(atNs);
    }

    /** Nothing happens until then, except the looks that the referee asked for. */
    Run idle(final long untilNs) {
        while (referee.wakeNs() <= untilNs) {
            look(referee.wakeNs());
        }
        return this;
    }

    Run look(final long atNs) {
        referee.look(atNs, yard);
        return this;
    }

    /** What was found, as "rule output at-ns". */
    List<String> found() {
        return referee.violations().stream()
                .map(violation -> violation.rule() + " " + violation.output() + " " + violation.atNs())
                .toList();
    }
}
