package slackwater.simulator.budget;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Output;
import slackwater.model.engineering.ContactLimits;
import slackwater.model.engineering.Cylinder;
import slackwater.model.kind.Family;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.yard.StrokeTrial;
import slackwater.simulator.yard.Yard;

/** Force, time and energy of strokes and returns, as the yard's own cylinders have them. */
final class StrokeLines {
    private static final String CAUTION =
            "for healthy adults, not children, and never a permission (handbook 1.11, EN 16005 and ANSI A156.19)";
    private static final String MODEL = "m a = p A - load, flow after ISO 6358 (handbook 1.3, 1.9)";

    /** A stroke may take a hundredth longer than stated: throttles are not set finer. */
    private static final double SET_TO = 1.01;

    private StrokeLines() {}

    static void add(final Reckoning to) {
        final Yard yard = new Yard(to.rig(), Crowd.NOBODY, 1);
        for (int i = 0; i < to.rig().outputs().size(); i++) {
            final Output output = to.rig().outputs().get(i);
            final Optional<StrokeTrial> trial = yard.strokeTrial(i);
            if (trial.isPresent()) {
                stroke(to, output, trial.get());
            } else if (output.family() == Family.VALVE
                    && output.facts().si("nozzle").isEmpty()) {
                to.leaveOut("force and energy of " + output.name() + ": say bore, travel and moving-mass");
            }
            if (trial.isEmpty()) {
                falls(to, output);
            }
        }
    }

    private static void stroke(final Reckoning to, final Output output, final StrokeTrial trial) {
        final List<String> assumed = assumed(output);
        final double loadN = trial.pullsBackN() + trial.frictionN();
        to.add(entry(output, "force to move it", assumed)
                .asks(loadN, Measure.NEWTON)
                .has(trial.pushN(), Measure.NEWTON)
                .by("F = p A against weight, spring and friction (handbook 1.1, 1.9)")
                .advice("a larger bore, more pressure, or a lighter part")
                .judged());
        time(to, output, "stroke", trial.outS(), output.facts().duration("strokes-in"), assumed);
        energy(to, output, "strikes with", trial.outJ(), assumed);
        time(to, output, "return", trial.backS(), output.facts().duration("returns-in"), assumed);
        energy(to, output, "returns with", trial.backJ(), assumed);
        to.add(entry(output, "pushes what is in its way with", assumed)
                .asks(Math.max(0, trial.pushN() - trial.pullsBackN()), Measure.NEWTON)
                .has(ContactLimits.LOW_ENERGY_DOOR_N, Measure.NEWTON)
                .by("against the force that stops a low-energy door; " + CAUTION)
                .advice("keep people away from it: distance and guards; less pressure or a smaller bore help")
                .cautioned());
    }

    private static void time(
            final Reckoning to,
            final Output output,
            final String what,
            final double takesS,
            final Optional<Duration> stated,
            final List<String> assumed) {
        final Entry entry = entry(output, what + " takes", assumed)
                .asks(takesS, Measure.SECOND)
                .by(MODEL);
        if (stated.isEmpty()) {
            to.add(entry.told());
            return;
        }
        final double statedS = CueCost.seconds(stated.get());
        to.add(entry.has(statedS, Measure.SECOND)
                .advice("say the time that it takes, open its throttle, or give it more force or flow")
                .line(takesS <= SET_TO * statedS ? Verdict.FITS : Verdict.SHORT));
    }

    private static void energy(
            final Reckoning to,
            final Output output,
            final String what,
            final double energyJ,
            final List<String> assumed) {
        to.add(entry(output, what, assumed)
                .asks(energyJ, Measure.JOULE)
                .has(ContactLimits.LOW_ENERGY_DOOR_J, Measure.JOULE)
                .by("m v2 / 2 at the end, against a low-energy door; " + CAUTION)
                .advice("throttle it, lighten it, or shorten its travel")
                .cautioned());
    }

    /** A part of which nobody tells a cylinder, but that falls freely. */
    private static void falls(final Reckoning to, final Output output) {
        final OptionalDouble massKg = output.facts().si("moving-mass");
        final OptionalDouble travelM = output.facts().si("travel");
        final boolean isThrottled = output.facts().duration("returns-in").isPresent();
        if (massKg.isPresent() && travelM.isPresent() && !isThrottled) {
            to.add(entry(output, "falls with at most", List.of())
                    .asks(massKg.getAsDouble() * Cylinder.GRAVITY_M_PER_S2 * travelM.getAsDouble(), Measure.JOULE)
                    .has(ContactLimits.GUARD_J, Measure.JOULE)
                    .by("m g h, against a power-operated guard (handbook 1.11, ISO 14120, from memory); " + CAUTION)
                    .advice("throttle its way down, lighten it, or shorten its travel")
                    .cautioned());
        }
    }

    private static List<String> assumed(final Output output) {
        final List<String> assumed = new ArrayList<>();
        if (output.facts().si("friction").isEmpty()) {
            assumed.add("seals take 10 % of the theoretical force (common practice, handbook 1.9); friction says it");
        }
        if (output.facts().si("flow").isEmpty()) {
            assumed.add("a valve of 300 l/min nominal flow (common practice, no source); flow says it");
        }
        return assumed;
    }

    private static Entry entry(final Output output, final String what, final List<String> assumed) {
        return new Entry(Line.Group.STROKES, output.name() + ": " + what).assuming(assumed);
    }
}
