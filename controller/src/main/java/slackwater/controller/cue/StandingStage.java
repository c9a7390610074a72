package slackwater.controller.cue;

import java.util.List;
import java.util.Optional;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.OffDelay;
import slackwater.controller.run.RunState;
import slackwater.model.Mode;
import slackwater.model.Output;
import slackwater.model.kind.Family;

/**
 * Wishes of the rig itself, after the cues' and before any judging: air while armed, heat while armed or warming, the
 * warning's light and sound; then shapes, such as a fan's after-run.
 */
public final class StandingStage {
    private final Family[] family;
    private final int[] zoneOf;
    private final boolean[] warns;
    private final List<Optional<Shape>> shapes;
    private final Flag[] hasStood;
    private final Flag[] hasAsked;

    /** Whether a heater may warm while its zone rests. */
    public interface Warming {
        boolean wantsHeat(RunState run, int output);
    }

    public StandingStage(final Places places, final List<String> warnsWith, final Layout layout) {
        family = places.outputs().stream().map(Output::family).toArray(Family[]::new);
        zoneOf = places.zoneOfOutput();
        warns = new boolean[family.length];
        for (final int output : places.outputsHere(warnsWith)) {
            warns[output] = true;
        }
        shapes = places.outputs().stream().map(output -> shape(output, layout)).toList();
        hasStood = flags(places, "stood", layout);
        hasAsked = flags(places, "asked", layout);
    }

    private static Flag[] flags(final Places places, final String name, final Layout layout) {
        return places.outputs().stream()
                .map(output -> layout.flag("output." + output.name() + "." + name))
                .toArray(Flag[]::new);
    }

    public void update(final RunState run, final Image image, final Warming warming) {
        for (int output = 0; output < family.length; output++) {
            final Mode zoneMode = image.zoneMode[zoneOf[output]];
            final boolean stands =
                    stands(output, zoneMode) || (family[output] == Family.HEATER && warming.wantsHeat(run, output));
            image.demand[output] |= stands;
            image.renewed[output] |= stands && !hasStood[output].is(run); // new once, not in every scan (S11)
            hasStood[output].set(run, stands);
            final Optional<Shape> shape = shapes.get(output);
            if (shape.isPresent()) {
                final Mode mode = image.mode[output];
                final boolean mayAfterRun = mode == Mode.ARMED || mode == Mode.RESTING || mode == Mode.WARNING;
                final boolean asks = shape.get().asks(run, image.demand[output], mayAfterRun);
                image.demand[output] = asks;
                image.renewed[output] |= asks && !hasAsked[output].is(run); // each onset of a pattern begins anew
                hasAsked[output].set(run, asks);
            }
        }
    }

    private boolean stands(final int output, final Mode zoneMode) {
        return switch (zoneMode) {
            case ARMED -> family[output] == Family.AIR_SUPPLY || family[output] == Family.HEATER;
            case WARNING -> warns[output] || family[output] == Family.HEATER;
            case STOPPED, FAULTED, LOCKED_OUT, BENCH, RESTING -> false;
        };
    }

    private static Optional<Shape> shape(final Output output, final Layout layout) {
        if (output.kind() instanceof ShapedKind shaped) {
            return Optional.of(shaped.shape(output, layout));
        }
        return output.family() == Family.FAN
                ? output.facts().duration("after-run").map(after -> new AfterRun(output, layout, after.toNanos()))
                : Optional.empty();
    }

    /** Goes on for a while after the demand has ended; never in stop, fault, lockout or on the bench (S15). */
    private static final class AfterRun implements Shape {
        private final OffDelay after;

        AfterRun(final Output output, final Layout layout, final long afterNs) {
            after = new OffDelay(layout, "output." + output.name() + ".after-run", afterNs);
        }

        @Override
        public boolean asks(final RunState run, final boolean isDemanded, final boolean mayAfterRun) {
            if (!mayAfterRun) {
                after.clear(run);
                return isDemanded;
            }
            return after.update(run, isDemanded);
        }
    }
}
