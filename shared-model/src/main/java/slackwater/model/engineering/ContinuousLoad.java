package slackwater.model.engineering;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Breaker and conductor carry 125 % of a continuous load and 100 % of any other, so that a continuous load may use 80 %
 * of a breaker (handbook 3.1, NEC 210.19(A)(1) and 210.20(A)).
 */
public final class ContinuousLoad {
    /** A current is continuous when it is expected for three hours or more, seconds (NEC article 100, from memory). */
    public static final double CONTINUOUS_FROM_S = 3 * 3_600;

    private static final double CONTINUOUS_FACTOR = 1.25;
    private static final double[] STANDARD_A = {15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100};

    private ContinuousLoad() {}

    public static boolean isContinuous(final double lastsS) {
        return Given.notNegative("lastsS", lastsS) >= CONTINUOUS_FROM_S;
    }

    /** Largest continuous load of a breaker, amperes. */
    public static double largestA(final double breakerA) {
        return Given.positive("breakerA", breakerA) / CONTINUOUS_FACTOR;
    }

    /** Largest continuous load of a breaker, watts. */
    public static double largestW(final double breakerA, final double supplyV) {
        return largestA(breakerA) * Given.positive("supplyV", supplyV);
    }

    /** What the breaker must be rated for, amperes. */
    public static double breakerA(final double continuousA, final double otherA) {
        return CONTINUOUS_FACTOR * Given.notNegative("continuousA", continuousA) + Given.notNegative("otherA", otherA);
    }

    /** The smallest standard breaker for a rating, amperes (NEC 240.6, from memory); empty above 100 A. */
    public static OptionalDouble standardBreakerA(final double atLeastA) {
        Given.notNegative("atLeastA", atLeastA);
        return DoubleStream.of(STANDARD_A).filter(rating -> rating >= atLeastA).findFirst();
    }

    /** Current of a load that draws its power without reactive current, amperes. */
    public static double amps(final double powerW, final double supplyV) {
        return Given.notNegative("powerW", powerW) / Given.positive("supplyV", supplyV);
    }
}
