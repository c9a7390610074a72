package slackwater.model.engineering;

/**
 * A round hole with the isentropic law (handbook 1.5): gamma 1.4, R 287.055 J/(kg K). {@link FlowPath#ofHole} follows
 * it to 0.2 % of the choked flow and is faster.
 *
 * @param diameterM m, above 0
 * @param dischargeCoefficient Cd, above 0 to 1; about 0.65 for a sharp edge
 */
public record Orifice(double diameterM, double dischargeCoefficient) {
    private static final double G = FreeAir.GAMMA;
    /** Ratio of absolute pressures at and below which the flow is choked (handbook 1.5 case 1). */
    public static final double CRITICAL_RATIO = StrictMath.pow(2 / (G + 1), G / (G - 1));
    /** Choked mass flow is this times area, absolute pressure and 1 / sqrt(T), sqrt(K) s/m (handbook 1.5 case 2). */
    public static final double CHOKED_ROOT_K_S_PER_M =
            StrictMath.sqrt(G / FreeAir.GAS_CONSTANT_J_PER_KG_K) * StrictMath.pow(2 / (G + 1), (G + 1) / (2 * (G - 1)));

    public Orifice {
        Given.positive("diameterM", diameterM);
        requireDischargeCoefficient(dischargeCoefficient);
    }

    /** Area of the hole itself, m2. */
    public double areaM2() {
        return circleM2(diameterM);
    }

    /**
     * Mass flow from side 1 to side 2, negative when side 2 has the higher pressure.
     *
     * @param p1PaAbs absolute pressure of side 1, Pa, 0 or more
     * @param p2PaAbs absolute pressure of side 2, Pa, 0 or more
     * @param upstreamK temperature of the air on the side with the higher pressure, K, above 0
     * @return kg/s
     */
    public double massFlowKgPerS(final double p1PaAbs, final double p2PaAbs, final double upstreamK) {
        Given.notNegative("p1PaAbs", p1PaAbs);
        Given.notNegative("p2PaAbs", p2PaAbs);
        Given.positive("upstreamK", upstreamK);
        return p2PaAbs > p1PaAbs
                ? -forwardKgPerS(p2PaAbs, p1PaAbs, upstreamK)
                : forwardKgPerS(p1PaAbs, p2PaAbs, upstreamK);
    }

    static void requireDischargeCoefficient(final double coefficient) {
        Given.require(coefficient > 0 && coefficient <= 1, "dischargeCoefficient", coefficient, "above 0, at most 1");
    }

    static double circleM2(final double diameterM) {
        return StrictMath.PI / 4 * diameterM * diameterM;
    }

    private double forwardKgPerS(final double upPa, final double downPa, final double upstreamK) {
        final double area = dischargeCoefficient * areaM2();
        if (downPa <= CRITICAL_RATIO * upPa) {
            return area * upPa * CHOKED_ROOT_K_S_PER_M / StrictMath.sqrt(upstreamK);
        }
        final double ratio = downPa / upPa;
        final double shape = StrictMath.pow(ratio, 2 / G) - StrictMath.pow(ratio, (G + 1) / G);
        return area
                * upPa
                * StrictMath.sqrt(2 * G / ((G - 1) * FreeAir.GAS_CONSTANT_J_PER_KG_K * upstreamK) * Math.max(0, shape));
    }
}
