package slackwater.model.engineering;

/**
 * What air flows through, described as ISO 6358-1 does (handbook 1.3). Reference density 1.185 kg/m3 at 100 kPa and 20
 * degC. Very near to no pressure difference the law of the standard has an endless slope, so from a pressure ratio of
 * {@link #LINEAR_ABOVE} a straight line leads to no flow, as the simulation manuals named in the handbook do.
 *
 * @param conductanceM3PerSPa sonic conductance C, m3/(s Pa) ANR, above 0; 1 dm3/(s bar) is 1e-8
 * @param criticalRatio b, the ratio of absolute pressures below which the flow is choked; at least 0, below 0.999;
 *     usually 0.2 to 0.5, less for a long tube, 0.528 for an ideal nozzle
 */
public record FlowPath(double conductanceM3PerSPa, double criticalRatio) {
    /** Above this ratio of absolute pressures the flow is proportional to the difference. */
    public static final double LINEAR_ABOVE = 0.999;
    /** Usual critical ratio of a valve whose maker prints none (handbook 1.4, worked example). */
    public static final double USUAL_CRITICAL_RATIO = 0.3;

    private static final double NOMINAL_P1_PA_ABS = FreeAir.absolutePa(600_000);
    private static final double NOMINAL_P2_PA_ABS = FreeAir.absolutePa(500_000);

    public FlowPath {
        Given.positive("conductanceM3PerSPa", conductanceM3PerSPa);
        Given.below("criticalRatio", criticalRatio, LINEAR_ABOVE);
    }

    /**
     * From a catalogue's nominal flow, 6 to 5 bar gauge at 20 degC (handbook 1.4).
     *
     * @param nominalM3PerS m3/s ANR, above 0; 600 dm3/min is 0.01
     */
    public static FlowPath fromNominalFlow(final double nominalM3PerS, final double criticalRatio) {
        Given.positive("nominalM3PerS", nominalM3PerS);
        return new FlowPath(nominalM3PerS / new FlowPath(1, criticalRatio).nominalM3PerS(), criticalRatio);
    }

    /** From a flow coefficient Kv in m3/h, to 8 % (handbook 1.4 case 9): {@link ValveRating#conductanceOfKv}. */
    public static FlowPath fromKv(final double kvM3PerH, final double criticalRatio) {
        return new FlowPath(ValveRating.conductanceOfKv(kvM3PerH), criticalRatio);
    }

    /** From a flow coefficient Cv in US gallons a minute at 1 psi, to 15 % (handbook 1.4 case 10). */
    public static FlowPath fromCv(final double cvGpmPerRootPsi, final double criticalRatio) {
        return fromKv(ValveRating.kvOfCv(cvGpmPerRootPsi), criticalRatio);
    }

    /**
     * From an area of flow with the isentropic law's choked flow and critical ratio (handbook 1.4 case 11, 1.5).
     *
     * @param areaM2 m2, above 0
     * @param dischargeCoefficient Cd, above 0 to 1
     */
    public static FlowPath fromArea(final double areaM2, final double dischargeCoefficient) {
        Given.positive("areaM2", areaM2);
        Orifice.requireDischargeCoefficient(dischargeCoefficient);
        return new FlowPath(areaM2 * dischargeCoefficient / areaPerConductance(), Orifice.CRITICAL_RATIO);
    }

    /** A round hole, as {@link #fromArea}; a sharp edge has a coefficient of about 0.65. */
    public static FlowPath ofHole(final double diameterM, final double dischargeCoefficient) {
        return fromArea(new Orifice(diameterM, dischargeCoefficient).areaM2(), dischargeCoefficient);
    }

    /**
     * Mass flow from side 1 to side 2 (handbook 1.3, ISO 6358-1); negative when side 2 has the higher pressure.
     *
     * @param p1PaAbs absolute pressure of side 1, Pa, 0 or more
     * @param p2PaAbs absolute pressure of side 2, Pa, 0 or more
     * @param upstreamK temperature of the air on the side with the higher pressure, K, above 0
     * @return kg/s
     */
    public double massFlowKgPerS(final double p1PaAbs, final double p2PaAbs, final double upstreamK) {
        Given.notNegative("p1PaAbs", p1PaAbs);
        Given.notNegative("p2PaAbs", p2PaAbs);
        return massFlow(conductanceM3PerSPa, criticalRatio, p1PaAbs, p2PaAbs, rootOfT0OverT(upstreamK));
    }

    /** As {@link #massFlowKgPerS} in m3/s ANR. */
    public double freeFlowM3PerS(final double p1PaAbs, final double p2PaAbs, final double upstreamK) {
        return FreeAir.anrM3PerS(massFlowKgPerS(p1PaAbs, p2PaAbs, upstreamK));
    }

    /**
     * The same law for inner loops: it checks nothing, allocates nothing and takes at most one square root. What is
     * not a number comes out as not a number.
     *
     * @param conductance m3/(s Pa); 0 is a closed path
     * @param criticalRatio at least 0 and below 0.999
     * @param rootOfT0OverT from {@link #rootOfT0OverT} for the side with the higher pressure; 1 at 20 degC
     * @return kg/s, positive from side 1 to side 2
     */
    public static double massFlow(
            final double conductance,
            final double criticalRatio,
            final double p1PaAbs,
            final double p2PaAbs,
            final double rootOfT0OverT) {
        final double scale = conductance * FreeAir.REFERENCE_KG_PER_M3 * rootOfT0OverT;
        return p2PaAbs > p1PaAbs
                ? -scale * chokedEquivalentPa(criticalRatio, p2PaAbs, p1PaAbs)
                : scale * chokedEquivalentPa(criticalRatio, p1PaAbs, p2PaAbs);
    }

    /** The square root of 293.15 K over a temperature in K above 0, for {@link #massFlow}. */
    public static double rootOfT0OverT(final double upstreamK) {
        return StrictMath.sqrt(FreeAir.REFERENCE_K / Given.positive("upstreamK", upstreamK));
    }

    /**
     * This and another in a row as one: choked flow as two ellipses in a row give it, and a critical ratio such that
     * small pressure differences add up (the series rule of ISO 6358, from memory). Exact where the whole is choked,
     * else to 2.3 % of the choked flow for critical ratios up to 0.528.
     */
    public FlowPath inSeries(final FlowPath next) {
        final double conductance = conductanceM3PerSPa * shareInto(next);
        final double softness = softnessOf(conductance, this) + softnessOf(conductance, next);
        return new FlowPath(conductance, Math.max(0, 1 - softness));
    }

    /** Nominal flow, 6 to 5 bar gauge at 20 degC, m3/s ANR (handbook 1.4 cases 1 and 2). */
    public double nominalM3PerS() {
        return freeFlowM3PerS(NOMINAL_P1_PA_ABS, NOMINAL_P2_PA_ABS, FreeAir.REFERENCE_K);
    }

    /** Flow coefficient Kv, m3/h, to 8 %: the inverse of {@link #fromKv}. */
    public double kvM3PerH() {
        return conductanceM3PerSPa / ValveRating.conductanceOfKv(1);
    }

    /** Flow coefficient Cv, US gallons a minute at 1 psi, to 15 %: the inverse of {@link #fromCv}. */
    public double cvGpmPerRootPsi() {
        return ValveRating.cvOfKv(kvM3PerH());
    }

    /** Area of an ideal nozzle (Cd = 1) with the same choked flow, m2: about 5 mm2 a dm3/(s bar). */
    public double effectiveAreaM2() {
        return conductanceM3PerSPa * areaPerConductance();
    }

    /** The upstream pressure at which a choked path passes as much. */
    private static double chokedEquivalentPa(final double criticalRatio, final double upPa, final double downPa) {
        if (downPa <= criticalRatio * upPa) {
            return upPa;
        }
        if (upPa == downPa) {
            return 0;
        }
        final double ratio = downPa / upPa;
        return ratio > LINEAR_ABOVE
                ? upPa * ellipse(LINEAR_ABOVE, criticalRatio) * (1 - ratio) / (1 - LINEAR_ABOVE)
                : upPa * ellipse(ratio, criticalRatio);
    }

    private static double ellipse(final double ratio, final double criticalRatio) {
        final double beyond = (ratio - criticalRatio) / (1 - criticalRatio);
        return StrictMath.sqrt((1 - beyond) * (1 + beyond));
    }

    /**
     * Flow through this, as a share of its choked flow, when the next one follows it into a vacuum. With m the pressure
     * between them over the inlet's, this passes sqrt(1 - ((m - b) / (1 - b))^2) and the next one k m.
     */
    private double shareInto(final FlowPath next) {
        final double k = next.conductanceM3PerSPa / conductanceM3PerSPa;
        final double b = criticalRatio;
        if (k * b >= 1) {
            return 1;
        }
        final double curve = 1 + k * k * (1 - b) * (1 - b);
        return k * (b + StrictMath.sqrt(b * b + curve * (1 - 2 * b))) / curve;
    }

    private static double softnessOf(final double conductance, final FlowPath path) {
        final double share = conductance / path.conductanceM3PerSPa;
        return share * share * (1 - path.criticalRatio);
    }

    private static double areaPerConductance() {
        return FreeAir.REFERENCE_KG_PER_M3 * StrictMath.sqrt(FreeAir.REFERENCE_K) / Orifice.CHOKED_ROOT_K_S_PER_M;
    }
}
