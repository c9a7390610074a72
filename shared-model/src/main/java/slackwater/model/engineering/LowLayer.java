package slackwater.model.engineering;

/**
 * How much denser than the air around it a cold or droplet-laden layer is, in parts of that air's density, by its three
 * causes (handbook 2.5). Chilling counts most at a light mist, droplets and their evaporation as much at the load of
 * several discs in little air. Warm fog from a heater rises until it has mixed and is no low layer.
 *
 * @param chilling by ice or dry ice
 * @param evaporation by the droplets that evaporate, down to the wet bulb
 * @param droplets by the weight of those that are left
 */
public record LowLayer(double chilling, double evaporation, double droplets) {
    private static final double GRAVITY_M_PER_S2 = 9.80665;

    /**
     * A layer made of the air around it.
     *
     * @param around the yard's air
     * @param chilledToC at most the temperature around; the same when nothing chills
     * @param dropletsKgPerM3 water put into it as droplets, before any of it evaporates
     */
    public static LowLayer of(final MoistAir around, final double chilledToC, final double dropletsKgPerM3) {
        Given.notNegative("dropletsKgPerM3", dropletsKgPerM3);
        final double aroundKgPerM3 = around.densityKgPerM3();
        final MoistAir chilled = around.chilledTo(chilledToC);
        final MoistAir cooled = chilled.withEvaporated(dropletsKgPerM3);
        final double left = Math.max(0, dropletsKgPerM3 - chilled.waterToWetBulbKgPerM3());
        return new LowLayer(
                (chilled.densityKgPerM3() - aroundKgPerM3) / aroundKgPerM3,
                (cooled.densityKgPerM3() - chilled.densityKgPerM3()) / aroundKgPerM3,
                dropletExcess(left, around));
    }

    /** What droplets add that do not evaporate, in parts of the air's density. */
    public static double dropletExcess(final double dropletsKgPerM3, final MoistAir around) {
        return Given.notNegative("dropletsKgPerM3", dropletsKgPerM3) / around.densityKgPerM3();
    }

    /** The excess of all three causes. */
    public double excess() {
        return chilling + evaporation + droplets;
    }

    /**
     * The speed at which its front spreads over level ground, sqrt(g h excess), m/s.
     *
     * @param heightM the layer's height, metres
     */
    public double frontMPerS(final double heightM) {
        return frontMPerS(heightM, excess());
    }

    /** As {@link #frontMPerS(double)} for a known excess, 0 to 1. */
    public static double frontMPerS(final double heightM, final double excess) {
        Given.positive("heightM", heightM);
        return StrictMath.sqrt(GRAVITY_M_PER_S2 * heightM * Given.within("excess", excess, 0, 1));
    }

    /**
     * The excess that a layer needs so that its front is as fast as a wind.
     *
     * @param heightM the layer's height, metres
     */
    public static double excessAgainst(final double heightM, final double windMPerS) {
        final double squared = Given.notNegative("windMPerS", windMPerS) * windMPerS;
        return squared / (GRAVITY_M_PER_S2 * Given.positive("heightM", heightM));
    }

    /**
     * Whether it stays low: a breeze that is as fast as its front, or faster, wins (common practice, no source).
     *
     * @param windMPerS wind at the layer's height
     */
    public boolean staysLow(final double heightM, final double windMPerS) {
        return Given.notNegative("windMPerS", windMPerS) < frontMPerS(heightM);
    }
}
