package slackwater.simulator.budget;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slackwater.model.Cue;
import slackwater.model.Step;

/**
 * What one playing of a cue costs.
 *
 * @param lengthS at the longest, everything drawn and awaited to its end
 * @param uses what each output does in it, in the order of the steps
 */
record CueCost(Cue cue, double lengthS, Map<String, Use> uses) {
    private static final double NS_PER_S = 1e9;

    /**
     * One output in one playing. Of several choices the most costly counts for the longest, and their mean for the mean.
     *
     * @param starts how often it is energised at most
     * @param longestS energised at the longest
     * @param meanS energised on the average
     * @param meanStarts how often on the average
     * @param latestFirstS when it is energised for the first time, at the latest
     */
    record Use(double starts, double longestS, double meanS, double meanStarts, double latestFirstS) {
        static final Use NONE = new Use(0, 0, 0, 0, Double.POSITIVE_INFINITY);

        Use and(final Use other) {
            return new Use(
                    starts + other.starts,
                    longestS + other.longestS,
                    meanS + other.meanS,
                    meanStarts + other.meanStarts,
                    Math.min(latestFirstS, other.latestFirstS));
        }

        private Use later(final double byS) {
            return new Use(starts, longestS, meanS, meanStarts, latestFirstS + byS);
        }

        private Use orElse(final Use other, final double share) {
            return new Use(
                    Math.max(starts, other.starts),
                    Math.max(longestS, other.longestS),
                    meanS + share * other.meanS,
                    meanStarts + share * other.meanStarts,
                    Math.min(latestFirstS, other.latestFirstS));
        }
    }

    static CueCost of(final Cue cue) {
        final Walk walk = new Walk();
        walk.all(cue.steps());
        return new CueCost(cue, walk.endS(), walk.uses);
    }

    Use use(final String output) {
        return uses.getOrDefault(output, Use.NONE);
    }

    static double seconds(final Duration time) {
        return time.toNanos() / NS_PER_S;
    }

    /** Goes through steps as they are played, each to its longest. */
    private static final class Walk {
        private final Map<String, Use> uses = new LinkedHashMap<>();
        private double stretchS;
        private double beforeS;
        private double farthestS;

        void all(final List<Step> steps) {
            steps.forEach(this::one);
        }

        double endS() {
            return farthestS;
        }

        private void one(final Step step) {
            if (step instanceof Step.Energise energise) {
                energise(energise);
            } else if (step instanceof Step.Pause pause) {
                goTo(beforeS + seconds(pause.lasts()) + seconds(pause.vary()));
            } else if (step instanceof Step.Await await) {
                newStretch(Math.max(farthestS, beforeS) + seconds(await.atMost()));
            } else if (step instanceof Step.OneOf oneOf) {
                oneOf(oneOf);
            }
        }

        private void energise(final Step.Energise step) {
            final double fromS = step.at().map(at -> stretchS + seconds(at)).orElse(beforeS);
            final double leastS = seconds(step.lasts());
            final double mostS = leastS + seconds(step.vary());
            final Optional<Double> blinkS = step.blink().map(CueCost::seconds);
            final double onShare = blinkS.isPresent() ? 0.5 : 1;
            final double starts = blinkS.map(each -> Math.ceil(mostS / each)).orElse(1.0);
            for (final String output : step.outputs()) {
                final Use use = new Use(starts, onShare * mostS, onShare * (leastS + mostS) / 2, starts, fromS);
                uses.merge(output, use, Use::and);
            }
            goTo(fromS + mostS);
        }

        private void oneOf(final Step.OneOf oneOf) {
            final double beginS = Math.max(farthestS, beforeS);
            final Map<String, Use> either = new LinkedHashMap<>();
            double longestS = 0;
            for (final List<Step> choice : oneOf.choices()) {
                final Walk walk = new Walk();
                walk.all(choice);
                longestS = Math.max(longestS, walk.endS());
                walk.uses.forEach((output, use) -> either.put(
                        output,
                        either.getOrDefault(output, Use.NONE)
                                .orElse(use.later(beginS), 1.0 / oneOf.choices().size())));
            }
            either.forEach((output, use) -> uses.merge(output, use, Use::and));
            newStretch(beginS + longestS);
        }

        private void goTo(final double atS) {
            beforeS = atS;
            farthestS = Math.max(farthestS, atS);
        }

        private void newStretch(final double atS) {
            stretchS = atS;
            goTo(atS);
        }
    }
}
