package slackwater.model.engineering;

import java.util.OptionalDouble;

/**
 * Pressure lost in a long hose (handbook 1.7), by three laws. The two empirical ones are for steel pipe and lie 50 to
 * 70 % above the smooth hose's Darcy law: they are the cautious answer, and no two of them agree better than to a
 * factor of 1.6.
 *
 * @param lengthM m, above 0
 * @param diameterM inside diameter, m, above 0
 */
public record Hose(double lengthM, double diameterM) {
    /** Beyond this drop the source of the first empirical law says that it is out of use: 1 kgf/cm2, Pa. */
    public static final double EMPIRICAL_LARGEST_DROP_PA = 98_066.5;
    /** Exponent of the flow in both empirical laws. */
    public static final double FLOW_EXPONENT = 1.85;

    private static final double MM_PER_M = 1_000;
    private static final double PA_PER_BAR = 100_000;
    private static final double PA_PER_KGF_PER_CM2 = 98_066.5;
    private static final double VISCOSITY_PA_S = 1.81e-5;
    private static final double ROUGHNESS_M = 1.5e-6;
    private static final double LARGEST_LAMINAR = 2_300;

    public Hose {
        Given.positive("lengthM", lengthM);
        Given.positive("diameterM", diameterM);
    }

    /** The air space inside, m3: dead volume when the hose lies between valve and cylinder. */
    public double volumeM3() {
        return areaM2() * lengthM;
    }

    /**
     * The empirical law in m3/min and kgf/cm2 (handbook 1.7 case 1).
     *
     * @param freeAirM3PerS m3/s free air, 0 or more
     * @param inletPaAbs Pa abs, above 0
     * @return Pa; more than {@link #EMPIRICAL_LARGEST_DROP_PA} only says that the hose is far too thin
     */
    public double empiricalDropPa(final double freeAirM3PerS, final double inletPaAbs) {
        final double flowM3PerMin = 60 * Given.notNegative("freeAirM3PerS", freeAirM3PerS);
        final double shape = shape(inletPaAbs / PA_PER_KGF_PER_CM2);
        return 7.57e4 * StrictMath.pow(flowM3PerMin, FLOW_EXPONENT) * shape * PA_PER_KGF_PER_CM2;
    }

    /**
     * The compressor handbooks' form in l/s and bar (handbook 1.7 case 2, from memory); as {@link #empiricalDropPa}.
     */
    public double handbookDropPa(final double freeAirM3PerS, final double inletPaAbs) {
        final double flowLPerS = 1_000 * Given.notNegative("freeAirM3PerS", freeAirM3PerS);
        return 450 * StrictMath.pow(flowLPerS, FLOW_EXPONENT) * shape(inletPaAbs / PA_PER_BAR) * PA_PER_BAR;
    }

    /**
     * Darcy's law for a smooth hose at an even temperature (handbook 1.7 case 5).
     *
     * @param anrM3PerS m3/s ANR, 0 or more
     * @param inletPaAbs Pa abs, above 0
     * @param airK K, above 0
     * @return Pa; empty when the hose cannot pass so much at that pressure
     */
    public OptionalDouble darcyDropPa(final double anrM3PerS, final double inletPaAbs, final double airK) {
        Given.positive("inletPaAbs", inletPaAbs);
        Given.positive("airK", airK);
        if (anrM3PerS == 0) {
            return OptionalDouble.of(0);
        }
        final double flux = fluxKgPerSM2(anrM3PerS);
        final double lost = frictionFactor(reynolds(anrM3PerS))
                * lengthM
                / diameterM
                * FreeAir.GAS_CONSTANT_J_PER_KG_K
                * airK
                * flux
                * flux;
        final double outletSquared = inletPaAbs * inletPaAbs - lost;
        return outletSquared > 0
                ? OptionalDouble.of(inletPaAbs - StrictMath.sqrt(outletSquared))
                : OptionalDouble.empty();
    }

    /** Reynolds number at a flow in m3/s ANR, 0 or more; viscosity of air at 20 degC (handbook 1.7 case 3). */
    public double reynolds(final double anrM3PerS) {
        return fluxKgPerSM2(anrM3PerS) * diameterM / VISCOSITY_PA_S;
    }

    /**
     * Darcy's friction factor of a smooth hose (handbook 1.7 case 4, Swamee and Jain; roughness 0.0015 mm). The
     * equation is made for 5000 and more; up to 2300 it is the laminar 64 / Re, and between both a guess on the
     * cautious side.
     *
     * @param reynolds above 0
     */
    public double frictionFactor(final double reynolds) {
        Given.positive("reynolds", reynolds);
        if (reynolds <= LARGEST_LAMINAR) {
            return 64 / reynolds;
        }
        final double rough = ROUGHNESS_M / (3.7 * diameterM) + 5.74 / StrictMath.pow(reynolds, 0.9);
        final double log = StrictMath.log10(rough);
        return 0.25 / (log * log);
    }

    /**
     * The hose as a flow path for a moving model: C = 0.029 D^2 / sqrt(L / D^1.25 + 510), b = 474 C / D^2 in SI units
     * (a published fit to plastic tube, from memory, not looked up). Within a tenth of {@link #darcyDropPa} for 10 m
     * of 6 mm at 200 l/min.
     */
    public FlowPath asFlowPath() {
        final double square = diameterM * diameterM;
        final double conductance = 0.029 * square / StrictMath.sqrt(lengthM / StrictMath.pow(diameterM, 1.25) + 510);
        return new FlowPath(conductance, 474 * conductance / square);
    }

    private double shape(final double inletAbs) {
        Given.positive("inletPaAbs", inletAbs);
        return lengthM / (StrictMath.pow(MM_PER_M * diameterM, 5) * inletAbs);
    }

    private double fluxKgPerSM2(final double anrM3PerS) {
        return Given.notNegative("anrM3PerS", anrM3PerS) * FreeAir.REFERENCE_KG_PER_M3 / areaM2();
    }

    private double areaM2() {
        return Orifice.circleM2(diameterM);
    }
}
