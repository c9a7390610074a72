package lantern;

import java.time.Duration;
import java.util.List;
import slackwater.controller.cue.Asking;
import slackwater.controller.cue.CueCode;
import slackwater.controller.cue.Playing;
import slackwater.controller.image.Places;
import slackwater.controller.run.Count;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Cue;
import slackwater.model.Output;
import slackwater.model.kind.Key;

/**
 * Lights the lanterns of its zone one after another, in the order of the rig: one at its first start, two at its second,
 * and so on; after all of them it begins with one again.
 */
public final class SwellCount implements CueCode {
    private static final Duration EACH = Duration.ofSeconds(1);
    private static final Duration HOLDS = Duration.ofSeconds(3);

    @Override
    public String word() {
        return "swell-count";
    }

    @Override
    public List<Key> keys() {
        return List.of(
                Key.duration("each", "from one lantern to the next; 1 s where it says nothing"),
                Key.duration("holds", "how long all that are lit burn together; 3 s where it says nothing"));
    }

    @Override
    public Playing compile(final Cue cue, final Places places, final Layout layout, final Numbers draws) {
        final List<String> lanterns = places.outputs().stream()
                .filter(output -> output.kind() instanceof ShipLantern && output.zone().equals(cue.zone()))
                .map(Output::name)
                .toList();
        return new Swell(cue, places.outputsHere(lanterns), layout);
    }

    /** Immutable; what it remembers are the run's own cells and timers, which it was handed here. */
    private static final class Swell implements Playing {
        private final int[] lanterns;
        private final long eachNs;
        private final long holdsNs;
        private final Count wanted;
        private final Count lit;
        private final Flag isNew;
        private final Timer next;

        Swell(final Cue cue, final int[] lanterns, final Layout layout) {
            this.lanterns = lanterns;
            eachNs = cue.facts().duration("each").orElse(EACH).toNanos();
            holdsNs = cue.facts().duration("holds").orElse(HOLDS).toNanos();
            final String place = "cue." + cue.name();
            wanted = layout.count(place + ".wanted", lanterns.length);
            lit = layout.count(place + ".lit", lanterns.length);
            isNew = layout.flag(place + ".new");
            next = layout.timer(place + ".next");
        }

        @Override
        public void begin(final RunState run, final long start) {
            if (lanterns.length > 0) {
                wanted.set(run, (start - 1) % lanterns.length + 1);
                light(run, 1);
            }
        }

        @Override
        public boolean goOn(final RunState run, final Asking asking) {
            if (next.isDue(run) && lit.of(run) < wanted.of(run)) {
                light(run, lit.of(run) + 1);
            } else if (next.isDue(run) || lit.of(run) == 0) {
                end(run);
                return false;
            }
            for (int i = 0; i < lit.of(run); i++) {
                asking.energise(lanterns[i], isNew.is(run) && i == lit.of(run) - 1);
            }
            isNew.set(run, false);
            return true;
        }

        private void light(final RunState run, final long count) {
            lit.set(run, count);
            isNew.set(run, true);
            next.start(run, count == wanted.of(run) ? holdsNs : eachNs);
        }

        @Override
        public void end(final RunState run) {
            wanted.set(run, 0);
            lit.set(run, 0);
            isNew.set(run, false);
            next.stop(run);
        }

        @Override
        public int[] outputs() {
            return lanterns.clone();
        }
    }
}
