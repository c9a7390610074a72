package slackwater.model.engineering;

/** Droplets of water in air: how large an ultrasonic disc makes them, how fast they fall, how many a flow carries. */
public final class Droplets {
    /** Above it a droplet falls slower than Stokes' law says, metres (Reynolds number 1, from memory). */
    public static final double LARGEST_STOKES_M = 80e-6;

    private static final double WATER_KG_PER_M3 = 1_000;
    private static final double GRAVITY_M_PER_S2 = 9.80665;
    private static final double AIR_PA_S = 1.81e-5;
    private static final double WATER_N_PER_M = 0.0728;
    private static final double LANG_FACTOR = 0.34;

    private Droplets() {}

    /**
     * Median diameter of the droplets of a disc, metres: Lang's formula for water near 20 degC (handbook 2.5 case 7,
     * from memory).
     *
     * @param discHz 10 kHz to 3 MHz
     */
    public static double medianDiameterM(final double discHz) {
        Given.within("discHz", discHz, 10e3, 3e6);
        return LANG_FACTOR * StrictMath.cbrt(8 * Math.PI * WATER_N_PER_M / (WATER_KG_PER_M3 * discHz * discHz));
    }

    /**
     * Speed at which a droplet sinks through still air, m/s: Stokes' law; the air's own lift is neglected.
     *
     * @param diameterM above 0, at most {@link #LARGEST_STOKES_M}
     */
    public static double settlingMPerS(final double diameterM) {
        Given.positive("diameterM", diameterM);
        Given.within("diameterM", diameterM, 0, LARGEST_STOKES_M);
        return WATER_KG_PER_M3 * diameterM * diameterM * GRAVITY_M_PER_S2 / (18 * AIR_PA_S);
    }

    /**
     * Droplets in an air flow that carries all of them, none evaporated, kg/m3.
     *
     * @param waterM3PerS water of all discs, such as {@link UsualMister#DISC_M3_PER_S} times their number
     * @param airM3PerS the fan's flow
     */
    public static double loadKgPerM3(final double waterM3PerS, final double airM3PerS) {
        return Given.notNegative("waterM3PerS", waterM3PerS) * WATER_KG_PER_M3 / Given.positive("airM3PerS", airM3PerS);
    }

    /** Heat that the air loses when all the water evaporates, W. */
    public static double coolingW(final double waterM3PerS) {
        return Given.notNegative("waterM3PerS", waterM3PerS) * WATER_KG_PER_M3 * MoistAir.EVAPORATION_J_PER_KG;
    }
}
