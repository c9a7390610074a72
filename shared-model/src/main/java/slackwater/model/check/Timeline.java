package slackwater.model.check;

import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import slackwater.model.Step;
import slackwater.model.check.Steps.Placed;

/**
 * When a stretch of a cue's steps wishes for what. Its moments hold for every draw of the variations, so that the
 * smallest time between two of them can be told exactly.
 */
final class Timeline {

    /** A wish of one step. */
    record Wish(Placed<Step> placed, Step.Energise step, Moment starts, Moment ends) {}

    private final List<Long> varyNs = new ArrayList<>();
    private final List<Wish> wishes = new ArrayList<>();

    private Timeline() {}

    static Timeline of(final List<Placed<Step>> stretch) {
        final Timeline timeline = new Timeline();
        Moment before = timeline.new Moment(0, new BitSet());
        for (final Placed<Step> placed : stretch) {
            if (placed.step() instanceof Step.Energise energise) {
                before = timeline.add(placed, energise, before);
            } else if (placed.step() instanceof Step.Pause pause) {
                before = before.plus(pause.lasts(), pause.vary());
            }
        }
        return timeline;
    }

    /** The wishes for one output, by their earliest start. */
    List<Wish> of(final String output) {
        final List<Wish> own = new ArrayList<>(wishes.stream()
                .filter(wish -> wish.step().outputs().contains(output))
                .toList());
        own.sort(Comparator.comparingLong(wish -> wish.starts().leastNs));
        return own;
    }

    private Moment add(final Placed<Step> placed, final Step.Energise step, final Moment before) {
        final Moment starts =
                step.at().map(at -> new Moment(at.toNanos(), new BitSet())).orElse(before);
        final Moment ends = starts.plus(step.lasts(), step.vary());
        wishes.add(new Wish(placed, step, starts, ends));
        return ends;
    }

    /** A moment after the stretch's start: a fixed part, and the variations that push it later. */
    final class Moment {
        private final long leastNs;
        private final BitSet draws;

        private Moment(final long leastNs, final BitSet draws) {
            this.leastNs = leastNs;
            this.draws = draws;
        }

        private Moment plus(final Duration lasts, final Duration vary) {
            final BitSet later = (BitSet) draws.clone();
            if (!vary.isZero()) {
                later.set(varyNs.size());
                varyNs.add(vary.toNanos());
            }
            return new Moment(leastNs + lasts.toNanos(), later);
        }

        /**
         * The smallest time from an earlier moment to this one, over all draws; negative where this one may come first.
         */
        Duration leastSince(final Moment earlier) {
            final BitSet onlyEarlier = (BitSet) earlier.draws.clone();
            onlyEarlier.andNot(draws);
            final long pushedNs = onlyEarlier.stream().mapToLong(varyNs::get).sum();
            return Duration.ofNanos(leastNs - earlier.leastNs - pushedNs);
        }
    }
}
