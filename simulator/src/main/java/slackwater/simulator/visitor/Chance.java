package slackwater.simulator.visitor;

import java.util.List;
import java.util.SplittableRandom;

/**
 * One seeded stream. Built on nothing but the generator's raw numbers and strict mathematics, so that a draw is the
 * same on every Java version.
 */
final class Chance {
    /** Deviates beyond this many standard deviations are pulled in: nobody walks at half or twice their age's pace. */
    private static final double DEVIATES_MAX = 2.5;

    private final SplittableRandom random;

    private Chance(final SplittableRandom random) {
        this.random = random;
    }

    static Chance seeded(final long seed) {
        return new Chance(new SplittableRandom(seed));
    }

    /** A stream of its own, so that how much is drawn from it moves nothing else (S22). */
    Chance split() {
        return new Chance(random.split());
    }

    /** From 0 up to, and not including, 1. */
    double share() {
        return (random.nextLong() >>> 11) * 0x1.0p-53;
    }

    double between(final double low, final double high) {
        return low + (high - low) * share();
    }

    boolean isIn(final double share) {
        return share() < share;
    }

    /** A gap of a Poisson process (handbook 5.5), in units of its mean. */
    double gap() {
        return -StrictMath.log(1 - share());
    }

    /** A normal deviate (Box and Muller), held within a few standard deviations. */
    double deviate() {
        final double radius = StrictMath.sqrt(2 * gap());
        final double deviate = radius * StrictMath.cos(2 * StrictMath.PI * share());
        return StrictMath.max(-DEVIATES_MAX, StrictMath.min(DEVIATES_MAX, deviate));
    }

    /** Index of one of several weights, which need not add up to 1. */
    int pick(final List<Double> weights) {
        final double sum = weights.stream().mapToDouble(Double::doubleValue).sum();
        double left = share() * sum;
        for (int i = 0; i < weights.size() - 1; i++) {
            left -= weights.get(i);
            if (left < 0) {
                return i;
            }
        }
        return weights.size() - 1;
    }
}
