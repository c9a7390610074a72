package slackwater.model.engineering;

/**
 * A burst that comes again and again.
 *
 * @param burstS how long a burst lasts, seconds
 * @param everyS from the beginning of a burst to the beginning of the next, at least {@code burstS}
 */
public record BurstCycle(double burstS, double everyS) {
    /** So that a volume of exactly some bursts does not lose one to rounding. */
    private static final double ROUNDED_AWAY = 1e-12;

    public BurstCycle {
        Given.positive("burstS", burstS);
        Given.within("everyS", everyS, burstS, Double.MAX_VALUE);
    }

    /** On time in all time, above 0 and at most 1. */
    public double duty() {
        return burstS / everyS;
    }

    public double burstsPerHour() {
        return 3_600 / everyS;
    }

    /** Whole bursts within a pump's time, such as {@link FogFluid#pumpTimeS}: a burst cut short is none. */
    public long wholeBursts(final double pumpTimeS) {
        return (long) Math.floor(Given.notNegative("pumpTimeS", pumpTimeS) / burstS * (1 + ROUNDED_AWAY));
    }

    /** From the first burst until the last whole one and its pause have passed, seconds. */
    public double lastsS(final double pumpTimeS) {
        return wholeBursts(pumpTimeS) * everyS;
    }
}
