package slackwater.model.engineering;

import java.util.OptionalDouble;

/**
 * When a thermal-magnetic breaker trips, in multiples of its rated current. Every figure is from memory (IEC 60898-1):
 * 1.13 holds for an hour, 1.45 trips within an hour, 2.55 trips within 1 s to 60 s up to 32 A; at once from 3 to 5
 * (type B) or 5 to 10 (type C).
 *
 * <p>The bimetal is one first-order memory of heat, where 1 is the heat of the rated current for ever: it tends towards
 * the square of the multiple. It trips at a heat between those of 1.13 and 1.45, and its time constant puts 2.55 in the
 * middle of its range; so it also keeps the points of UL 489 (1.35 within an hour, 2 within two minutes up to 30 A;
 * from memory). A real breaker's time scatters around it by a factor of three or more.
 */
public enum BreakerCurve {
    B(3, 5),
    C(5, 10);

    /** Heat at which the bimetal trips: 1.28 times the rated current for ever, halfway between 1.13 and 1.45. */
    public static final double TRIPS_AT_HEAT = 1.13 * 1.45;

    /** Time constant of the bimetal, seconds: 2.55 times the rated current trips it from cold after 29 s. */
    public static final double TIME_CONSTANT_S = 100;

    /** A trip by the magnet takes less than this, seconds (from memory). */
    public static final double AT_ONCE_S = 0.1;

    private final double mayTripAtOnceFrom;
    private final double tripsAtOnceFrom;

    BreakerCurve(final double mayTripAtOnceFrom, final double tripsAtOnceFrom) {
        this.mayTripAtOnceFrom = mayTripAtOnceFrom;
        this.tripsAtOnceFrom = tripsAtOnceFrom;
    }

    /** The multiple below which the magnet of none of this type trips. */
    public double mayTripAtOnceFrom() {
        return mayTripAtOnceFrom;
    }

    /** The multiple from which the magnet of every one of this type trips. */
    public double tripsAtOnceFrom() {
        return tripsAtOnceFrom;
    }

    /**
     * Seconds until it trips from cold, by the most sensitive magnet of its type; empty when it never does.
     *
     * @param multiple steady current in rated currents
     */
    public OptionalDouble tripsAfterS(final double multiple) {
        return tripsAfterS(multiple, 0);
    }

    /**
     * As {@link #tripsAfterS(double)} from a heat, such as 0.64 after long use at 80 %.
     *
     * @param heat 0 or more; {@link #TRIPS_AT_HEAT} or more has tripped already
     */
    public OptionalDouble tripsAfterS(final double multiple, final double heat) {
        Given.notNegative("heat", heat);
        if (heat >= TRIPS_AT_HEAT) {
            return OptionalDouble.of(0);
        }
        final double towards = square(multiple);
        if (towards <= TRIPS_AT_HEAT) {
            return OptionalDouble.empty();
        }
        final double thermalS = TIME_CONSTANT_S * StrictMath.log((towards - heat) / (towards - TRIPS_AT_HEAT));
        return OptionalDouble.of(multiple >= mayTripAtOnceFrom ? Math.min(AT_ONCE_S, thermalS) : thermalS);
    }

    /** The heat after a time at a current: what a plant keeps from step to step. */
    public static double heatAfter(final double heat, final double multiple, final double timeS) {
        Given.notNegative("heat", heat);
        final double kept = StrictMath.exp(-Given.notNegative("timeS", timeS) / TIME_CONSTANT_S);
        return square(multiple) * (1 - kept) + heat * kept;
    }

    private static double square(final double multiple) {
        return Given.notNegative("multiple", multiple) * multiple;
    }
}
