package slackwater.simulator.sabotage;

import java.util.List;
import slackwater.controller.journal.Journal;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.mode.Wall;
import slackwater.controller.pins.Pins;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.scan.Ports;
import slackwater.controller.scan.Scan;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.simulator.referee.Referee;
import slackwater.simulator.referee.Violation;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.yard.Yard;

/** One controller whose referee looks after every single pin write, not once a scan (S9). */
final class Between implements Pins {
    private static final long PERIOD_NS = 10_000_000L;

    private final Rig rig;
    private final Yard yard;
    private final Referee referee;
    private long nowNs;

    private Between(final Rig rig) {
        this.rig = rig;
        yard = new Yard(rig, Crowd.NOBODY, 1);
        referee = Referee.of(rig);
    }

    /** One fan takes over from another in one scan: only once the first is at rest is there current for the second. */
    static List<Violation> oneFanAfterAnother(final Rig rig, final Show show) {
        final Between pins = new Between(rig);
        final Plan plan = Plan.compile(rig, show, "quay", Options.plain(1).with(List.of(new Scenes.Trouble())));
        final Journal journal = event -> true;
        final Scan scan = new Scan(
                plan, new Ports(pins, LatchStore.inMemory(Kept.NOTHING), journal, BoardWatchdog.NONE, SampleAge.NONE));
        pins.hold("water", true);
        pins.hold("reach", false);
        for (int at = 0; at < 1_700; at++) {
            pins.nowNs = at * PERIOD_NS;
            pins.yard.pressStopLoop(at >= 100 && at < 200);
            pins.hold("reset", at >= 300 && at < 310);
            pins.hold("reach", at >= 400 && at < 500);
            pins.hold("arm-key", at >= 600);
            pins.hold("ask-fans", at >= 1_300);
            pins.yard.step(pins.nowNs);
            pins.yard.setHoldUp(0, at > 0);
            pins.referee.look(pins.nowNs, pins.yard);
            scan.once(pins.nowNs, new Wall(0, true));
        }
        return pins.referee.violations();
    }

    private void hold(final String input, final boolean isActive) {
        yard.hold(rig.inputs().indexOf(rig.input(input).orElseThrow()), isActive);
    }

    @Override
    public void sample() {}

    @Override
    public boolean isHigh(final int input) {
        return yard.isInputHigh(input, 0);
    }

    @Override
    public boolean hadEdge(final int input) {
        return false;
    }

    @Override
    public void write(final int output, final boolean isHigh) {
        yard.setOutputHigh(output, isHigh);
        referee.look(nowNs, yard);
    }

    @Override
    public ReadBack readBack(final int output) {
        return ReadBack.UNKNOWN;
    }

    @Override
    public void writeHoldUp(final boolean isHigh) {}

    @Override
    public boolean isHoldUpSeenClosed() {
        return nowNs > 0;
    }
}
