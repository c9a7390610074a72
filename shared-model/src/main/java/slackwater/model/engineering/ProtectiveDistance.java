package slackwater.model.engineering;

/**
 * How far in front of a danger a light beam or curtain must hang, so that the danger has ended when somebody who broke
 * it arrives: S = K * T + C (handbook 6.7, ISO 13855 in its edition of 2010). Millimetres and seconds, as in the
 * standard.
 */
public final class ProtectiveDistance {
    /** Coarsest curtain that still tells a hand: above it a curtain counts as beams. */
    public static final double FINEST_BEAMS_MM = 40;

    private static final double HAND_MM_PER_S = 2_000;
    private static final double WALK_MM_PER_S = 1_600;
    private static final double SWITCH_OVER_MM = 500;
    private static final double NEAREST_MM = 100;
    private static final double REACH_OVER_BEAMS_MM = 850;

    private ProtectiveDistance() {}

    /**
     * For a light curtain of at most 40 mm resolution.
     *
     * @param stopsInS time from the broken curtain to the end of the danger, seconds
     * @param resolutionMm the smallest body that the curtain surely sees, millimetres
     */
    public static double curtainMm(final double stopsInS, final double resolutionMm) {
        requireTime(stopsInS);
        final double reachMm = reachThroughMm(resolutionMm);
        final double firstMm = HAND_MM_PER_S * stopsInS + reachMm;
        if (firstMm <= SWITCH_OVER_MM) {
            return Math.max(NEAREST_MM, firstMm);
        }
        return Math.max(SWITCH_OVER_MM, WALK_MM_PER_S * stopsInS + reachMm);
    }

    /** For one or several single beams, which somebody can reach over. */
    public static double beamsMm(final double stopsInS) {
        requireTime(stopsInS);
        return WALK_MM_PER_S * stopsInS + REACH_OVER_BEAMS_MM;
    }

    /**
     * For a field parallel to the ground (from memory, not looked up).
     *
     * @param heightMm the field's height above the ground, at most 1000 mm
     */
    public static double floorMm(final double stopsInS, final double heightMm) {
        requireTime(stopsInS);
        if (!(heightMm >= 0 && heightMm <= 1_000)) {
            throw new IllegalArgumentException("heightMm=" + heightMm + " is not within 0 to 1000");
        }
        return WALK_MM_PER_S * stopsInS + Math.max(REACH_OVER_BEAMS_MM, 1_200 - 0.4 * heightMm);
    }

    /**
     * For a yard: a running child is faster than the 1.6 m/s of a walking adult, so K is 2000 mm/s throughout (the
     * project's own caution, no source).
     */
    public static double yardBeamsMm(final double stopsInS) {
        requireTime(stopsInS);
        return HAND_MM_PER_S * stopsInS + REACH_OVER_BEAMS_MM;
    }

    /** As {@link #yardBeamsMm} for a curtain of at most 40 mm resolution. */
    public static double yardCurtainMm(final double stopsInS, final double resolutionMm) {
        requireTime(stopsInS);
        return Math.max(NEAREST_MM, HAND_MM_PER_S * stopsInS + reachThroughMm(resolutionMm));
    }

    private static double reachThroughMm(final double resolutionMm) {
        if (!(resolutionMm > 0 && resolutionMm <= FINEST_BEAMS_MM)) {
            throw new IllegalArgumentException("resolutionMm=" + resolutionMm + " is not within 0 to 40");
        }
        return Math.max(0, 8 * (resolutionMm - 14));
    }

    private static void requireTime(final double stopsInS) {
        if (!(stopsInS >= 0)) {
            throw new IllegalArgumentException("stopsInS=" + stopsInS + " is not a length of time");
        }
    }
}
