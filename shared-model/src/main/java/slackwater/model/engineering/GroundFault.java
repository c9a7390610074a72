package slackwater.model.engineering;

import java.util.OptionalDouble;

/** A ground-fault interrupter of class A (handbook 3.2, UL 943). */
public final class GroundFault {
    /** At this leak it must trip, amperes. */
    public static final double TRIPS_FROM_A = 0.006;

    /** Below this leak it must not trip, amperes. */
    public static final double HOLDS_BELOW_A = 0.004;

    /** What a supply with capacitors to ground leaks, amperes (common practice, no source). */
    public static final UsualRange SUPPLY_LEAK_A = new UsualRange(0.1, 0.5).times(1e-3);

    private static final double FORMULA_ENDS_A = 0.264;
    private static final double ONE_SECOND_A = 0.020;
    private static final double POWER = 1.43;

    private GroundFault() {}

    /** What a leak does. */
    public enum Answer {
        HOLDS,
        /** Between the two limits nobody knows: one unit trips and another does not. */
        MAY_TRIP,
        TRIPS
    }

    public static Answer of(final double leakA) {
        Given.notNegative("leakA", leakA);
        if (leakA >= TRIPS_FROM_A) {
            return Answer.TRIPS;
        }
        return leakA < HOLDS_BELOW_A ? Answer.HOLDS : Answer.MAY_TRIP;
    }

    /**
     * The longest time that it may take, (20 mA / I)^1.43 seconds; above 264 mA the time at 264 mA. Empty where it need
     * not trip.
     */
    public static OptionalDouble longestTripS(final double leakA) {
        if (of(leakA) != Answer.TRIPS) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(StrictMath.pow(ONE_SECOND_A / Math.min(leakA, FORMULA_ENDS_A), POWER));
    }
}
