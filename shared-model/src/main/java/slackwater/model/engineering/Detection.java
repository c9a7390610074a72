package slackwater.model.engineering;

/**
 * How sensors see people who walk (handbook 5.3, plane geometry): widths and times, direction and speed from two beams, and where
 * somebody is when the prop answers. Metres, seconds, degrees; speeds above 0.
 */
public final class Detection {
    /** Shortest time between two beams one metre apart that a walker can need, seconds (common practice, no source). */
    public static final double LEAST_PAIR_S_PER_M = 0.15;
    /** Longest such time: longer, and it was two people (common practice, no source). */
    public static final double MOST_PAIR_S_PER_M = 5;

    /** Far below any clock of a sensor, and above what the arithmetic of a double adds. */
    private static final double ROUNDING_S = 1e-9;

    private Detection() {}

    /** Which of two beams was broken first. */
    public enum First {
        A,
        B,
        NEITHER
    }

    /** Width of a fan of sight square across its middle; the opening is below 180 degrees. */
    public static double fanWidthM(final double angleDeg, final double distanceM) {
        Given.positive("angleDeg", angleDeg);
        if (!(angleDeg < 180)) {
            throw new IllegalArgumentException("angleDeg=" + angleDeg + " is not below 180");
        }
        return 2 * Given.notNegative("distanceM", distanceM) * StrictMath.tan(StrictMath.toRadians(angleDeg / 2));
    }

    /** How long somebody takes over a way: across a fan, or from one beam to the next. */
    public static double crossingS(final double wayM, final double speedMPerS) {
        return Given.notNegative("wayM", wayM) / Given.positive("speedMPerS", speedMPerS);
    }

    /** How long a body keeps a beam broken that is narrow beside it. */
    public static double beamBlockedS(final double bodyDepthM, final double speedMPerS) {
        return crossingS(Given.positive("bodyDepthM", bodyDepthM), speedMPerS);
    }

    /** Speed from the time between two beams. */
    public static double pairSpeedMPerS(final double spacingM, final double betweenS) {
        return Given.positive("spacingM", spacingM) / Given.positive("betweenS", betweenS);
    }

    /** Which beam was broken first; at the very same moment neither, and there is no direction to tell. */
    public static First pairOrder(final double brokeAAtS, final double brokeBAtS) {
        if (!Double.isFinite(brokeAAtS) || !Double.isFinite(brokeBAtS)) {
            throw new IllegalArgumentException(
                    "brokeAAtS=" + brokeAAtS + " and brokeBAtS=" + brokeBAtS + " are not both moments");
        }
        if (brokeAAtS == brokeBAtS) {
            return First.NEITHER;
        }
        return brokeAAtS < brokeBAtS ? First.A : First.B;
    }

    /** Whether one walker can have broken both beams; both limits belong to it. */
    public static boolean isOneWalker(final double spacingM, final double betweenS) {
        Given.positive("spacingM", spacingM);
        Given.notNegative("betweenS", betweenS);
        return betweenS >= LEAST_PAIR_S_PER_M * spacingM - ROUNDING_S
                && betweenS <= MOST_PAIR_S_PER_M * spacingM + ROUNDING_S;
    }

    /**
     * Where somebody is on a straight way when the prop reveals itself, metres along the way.
     *
     * @param seenAtM where the sensor saw them, metres along the way
     * @param revealsInS from seeing to the reveal: sensor, filter, scan, steps of the cue, valve and travel
     */
    public static double atRevealM(final double seenAtM, final double speedMPerS, final double revealsInS) {
        if (!Double.isFinite(seenAtM)) {
            throw new IllegalArgumentException("seenAtM=" + seenAtM + " is not a place");
        }
        return seenAtM + Given.positive("speedMPerS", speedMPerS) * Given.notNegative("revealsInS", revealsInS);
    }

    /**
     * How far before the prop a sensor must see somebody, so that they still have a way to go when it reveals itself, metres.
     * The fastest visitor decides.
     *
     * @param remainsM the way that is left to the prop at the reveal, 0 or more
     */
    public static double sensorAheadM(final double speedMPerS, final double revealsInS, final double remainsM) {
        return atRevealM(Given.notNegative("remainsM", remainsM), speedMPerS, revealsInS);
    }

    /** The longest time from seeing to the reveal that a sensor so far ahead allows, seconds; 0 when it is too near for any. */
    public static double mostRevealsInS(final double sensorAheadM, final double speedMPerS, final double remainsM) {
        Given.notNegative("sensorAheadM", sensorAheadM);
        return crossingS(Math.max(0, sensorAheadM - Given.notNegative("remainsM", remainsM)), speedMPerS);
    }
}
