package slackwater.model.engineering;

/**
 * The other ways in which makers print how much a valve passes (handbook 1.4). Kv and Cv are figures of liquids: they
 * turn into a flow of air only to 8 to 15 %. The gas formulas (IEC 60534, VDI form) are from memory.
 */
public final class ValveRating {
    private static final double KV_OF_CV = 0.865;
    private static final double SUBSONIC = 514;
    private static final double CHOKED = 257;
    private static final double NORMAL_KG_PER_M3 = 1.293;
    private static final double PA_PER_BAR = 100_000;
    private static final double S_PER_H = 3_600;
    private static final double NOMINAL_DROP_BAR = 1;
    private static final double NOMINAL_OUTLET_BAR_ABS = FreeAir.absolutePa(500_000) / PA_PER_BAR;

    private ValveRating() {}

    /** Kv in m3/h of a Cv in US gallons a minute at 1 psi (handbook 1.4 case 6). */
    public static double kvOfCv(final double cvGpmPerRootPsi) {
        return KV_OF_CV * Given.positive("cvGpmPerRootPsi", cvGpmPerRootPsi);
    }

    /** Cv in US gallons a minute at 1 psi of a Kv in m3/h (handbook 1.4 case 7). */
    public static double cvOfKv(final double kvM3PerH) {
        return Given.positive("kvM3PerH", kvM3PerH) / KV_OF_CV;
    }

    /**
     * Nominal flow, 6 to 5 bar gauge at 20 degC, from the gas formula for unchoked flow (handbook 1.4 cases 4 and 5).
     *
     * @param kvM3PerH Kv, m3/h, above 0
     * @param reference what the flow is counted in; the formula's own is the normal litre
     * @return m3/s
     */
    public static double nominalOfKvM3PerS(final double kvM3PerH, final AirReference reference) {
        Given.positive("kvM3PerH", kvM3PerH);
        final double normalM3PerH = SUBSONIC
                * kvM3PerH
                * StrictMath.sqrt(NOMINAL_DROP_BAR * NOMINAL_OUTLET_BAR_ABS / (NORMAL_KG_PER_M3 * FreeAir.REFERENCE_K));
        return AirReference.NORMAL.toM3(normalM3PerH / S_PER_H, reference);
    }

    /**
     * Sonic conductance from the gas formula for choked flow at 20 degC (handbook 1.4 cases 9 and 10); 8 % off at most
     * with Kv, 15 % with Cv.
     *
     * @param kvM3PerH Kv, m3/h, above 0
     * @return m3/(s Pa) ANR
     */
    public static double conductanceOfKv(final double kvM3PerH) {
        Given.positive("kvM3PerH", kvM3PerH);
        final double normalM3PerHBar = CHOKED * kvM3PerH / StrictMath.sqrt(NORMAL_KG_PER_M3 * FreeAir.REFERENCE_K);
        return AirReference.NORMAL.toM3(normalM3PerHBar / S_PER_H / PA_PER_BAR, AirReference.ANR);
    }
}
