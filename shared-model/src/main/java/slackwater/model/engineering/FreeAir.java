package slackwater.model.engineering;

/** The gas and the reference atmosphere (handbook 0.1, ISO 8778 and ISO 6358; constants from memory). */
public final class FreeAir {
    /** Molar gas constant, J/(mol K). */
    public static final double MOLAR_J_PER_MOL_K = 8.314462618;
    /** Dry air, J/(kg K). */
    public static final double GAS_CONSTANT_J_PER_KG_K = 287.055;
    /** Ratio of specific heats of air. */
    public static final double GAMMA = 1.4;
    /** One standard atmosphere, Pa absolute: what gauge pressure is counted from. */
    public static final double ATMOSPHERE_PA = 101_325;
    /** Reference temperature T0 of ISO 6358, K. */
    public static final double REFERENCE_K = AirReference.ANR.temperatureK();
    /**
     * Density rho0 that ISO 6358 uses with its reference atmosphere, kg/m3. It goes with a gas constant of 288 J/(kg
     * K); mixing ideal moist air gives 1.1815, so flows agree with nature to 0.4 % at best.
     */
    public static final double REFERENCE_KG_PER_M3 = 1.185;
    /**
     * The gas constant that makes {@link #REFERENCE_KG_PER_M3} exact at 100 kPa and 20 degC, J/(kg K). A balance of
     * mass that uses it counts the same air in a tank as ISO 6358 counts through a valve.
     */
    public static final double REFERENCE_GAS_CONSTANT_J_PER_KG_K =
            AirReference.ANR.pressurePa() / (REFERENCE_KG_PER_M3 * REFERENCE_K);

    private static final double VAPOUR_DEFICIT = 0.378;

    private FreeAir() {}

    /**
     * The gas constant of a gas (handbook 0.1 case 1).
     *
     * @param molarKgPerMol molar mass, kg/mol, above 0; dry air has 0.0289647
     * @return J/(kg K)
     */
    public static double gasConstantJPerKgK(final double molarKgPerMol) {
        return MOLAR_J_PER_MOL_K / Given.positive("molarKgPerMol", molarKgPerMol);
    }

    /**
     * Absolute pressure in a standard atmosphere (handbook 0.1 case 5).
     *
     * @param gaugePa gauge pressure, Pa, not below a vacuum (-101325)
     */
    public static double absolutePa(final double gaugePa) {
        Given.require(gaugePa >= -ATMOSPHERE_PA, "gaugePa", gaugePa, "a vacuum or more");
        return gaugePa + ATMOSPHERE_PA;
    }

    /**
     * Gauge pressure in a standard atmosphere.
     *
     * @param pressurePaAbs absolute pressure, Pa, 0 or more
     */
    public static double gaugePa(final double pressurePaAbs) {
        return Given.notNegative("pressurePaAbs", pressurePaAbs) - ATMOSPHERE_PA;
    }

    /**
     * The mass of air in a space: ideal dry air.
     *
     * @param m3 the space, m3, 0 or more
     * @param pressurePaAbs absolute pressure in it, Pa, 0 or more
     * @param airK temperature in it, K, above 0
     * @return kg
     */
    public static double massKg(final double m3, final double pressurePaAbs, final double airK) {
        Given.notNegative("m3", m3);
        Given.notNegative("pressurePaAbs", pressurePaAbs);
        return pressurePaAbs * m3 / (GAS_CONSTANT_J_PER_KG_K * Given.positive("airK", airK));
    }

    /** A flow of volume at ISO 8778's reference, m3/s ANR, of a mass flow in kg/s of either sign (ISO 6358). */
    public static double anrM3PerS(final double massFlowKgPerS) {
        return massFlowKgPerS / REFERENCE_KG_PER_M3;
    }

    /**
     * Density of moist air from its partial pressures (handbook 0.1 case 3).
     *
     * @param pressurePaAbs absolute pressure of the mixture, Pa, above 0
     * @param airK temperature, K, above 0
     * @param vapourPa partial pressure of the water vapour, Pa, from 0 to the whole pressure
     * @return kg/m3
     */
    public static double moistKgPerM3(final double pressurePaAbs, final double airK, final double vapourPa) {
        Given.positive("pressurePaAbs", pressurePaAbs);
        Given.positive("airK", airK);
        Given.within("vapourPa", vapourPa, 0, pressurePaAbs);
        return (pressurePaAbs - VAPOUR_DEFICIT * vapourPa) / (GAS_CONSTANT_J_PER_KG_K * airK);
    }
}
