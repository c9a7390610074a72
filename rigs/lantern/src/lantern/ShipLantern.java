package lantern;

import java.util.List;
import slackwater.controller.cue.Shape;
import slackwater.controller.cue.ShapedKind;
import slackwater.controller.run.Count;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Output;
import slackwater.model.kind.Family;
import slackwater.model.kind.Key;

/** A lamp that burns like a flame in the wind: steady for a while, then out for a blink, never twice alike in a row. */
public final class ShipLantern implements ShapedKind {
    private static final long BURNS_NS = 900_000_000L;

    @Override
    public String word() {
        return "ship-lantern";
    }

    /** The safety rules see a lamp; what the lantern makes of a demand still passes all of them. */
    @Override
    public Family family() {
        return Family.LAMP;
    }

    @Override
    public List<Key> keys() {
        return List.of(Key.duration("burns", "about how long it burns between two blinks; 0.9 s where it says nothing"));
    }

    @Override
    public Shape shape(final Output output, final Layout layout) {
        final long burnsNs =
                output.facts().duration("burns").map(time -> time.toNanos()).orElse(BURNS_NS);
        return new Flame(output.name(), layout, burnsNs);
    }

    /** Knows the pattern and remembers nothing: where it is in the pattern stands in the run. */
    private static final class Flame implements Shape {
        /** Quarters of the usual time; the shortest, half of 0.9 s, is slow enough for eyes that cannot bear flashes. */
        private static final List<Integer> QUARTERS = List.of(4, 2, 7, 3, 5);

        private static final long OUT_NS = 80_000_000L;

        private final long burnsNs;
        private final Timer part;
        private final Count at;
        private final Flag isOut;

        Flame(final String output, final Layout layout, final long burnsNs) {
            this.burnsNs = burnsNs;
            part = layout.timer("lantern." + output + ".part");
            at = layout.count("lantern." + output + ".at", QUARTERS.size());
            isOut = layout.flag("lantern." + output + ".out");
        }

        @Override
        public boolean asks(final RunState run, final boolean isDemanded, final boolean mayAfterRun) {
            if (!isDemanded) {
                part.stop(run);
                at.set(run, 0);
                isOut.set(run, false);
                return false;
            }
            if (!part.isStarted(run)) {
                burn(run);
            } else if (part.isDue(run) && isOut.is(run)) {
                isOut.set(run, false);
                at.set(run, (at.of(run) + 1) % QUARTERS.size());
                burn(run);
            } else if (part.isDue(run)) {
                isOut.set(run, true);
                part.start(run, OUT_NS);
            }
            return !isOut.is(run);
        }

        private void burn(final RunState run) {
            part.start(run, burnsNs * QUARTERS.get((int) at.of(run)) / 4);
        }
    }
}
