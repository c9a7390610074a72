package slackwater.model.engineering;

/** Copper wire: size by American wire gauge and resistance (handbook 3.3). */
public final class Copper {
    /** Resistivity at 20 degC, ohm m: 100 % of the International Annealed Copper Standard. */
    public static final double OHM_M = 0.017241e-6;

    private static final double PER_K = 0.00393;
    private static final double BASE_C = 20;
    private static final double BASE_DIAMETER_M = 0.127e-3;
    private static final double RATIO = 92;

    private Copper() {}

    /**
     * Diameter of a solid wire, metres (ASTM B258).
     *
     * @param gauge 0 to 40
     */
    public static double awgDiameterM(final int gauge) {
        Given.within("gauge", gauge, 0, 40);
        return BASE_DIAMETER_M * StrictMath.pow(RATIO, (36 - gauge) / 39.0);
    }

    /** Cross-section of a solid wire, m2. */
    public static double awgAreaM2(final int gauge) {
        final double diameterM = awgDiameterM(gauge);
        return Math.PI / 4 * diameterM * diameterM;
    }

    /** Resistance at a temperature, in parts of the one at 20 degC. Straight from -50 to 150 degC. */
    public static double temperatureFactor(final double temperatureC) {
        return 1 + PER_K * (Given.within("temperatureC", temperatureC, -50, 150) - BASE_C);
    }

    /** Resistance of a metre of solid wire; a stranded one has 2 to 3 % more. */
    public static double ohmPerM(final double areaM2, final double temperatureC) {
        return OHM_M / Given.positive("areaM2", areaM2) * temperatureFactor(temperatureC);
    }
}
