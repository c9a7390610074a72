package slackwater.model.engineering;

/**
 * How fast a tank empties and fills (handbook 1.6). Absolute pressures. A real tank lies between the isothermal and the
 * adiabatic law: a short blast is nearly adiabatic, then the gas warms and the pressure creeps up again.
 *
 * @param volumeM3 m3, above 0
 */
public record AirTank(double volumeM3) {
    private static final int SIMPSON_PIECES = 400;
    private static final double GAMMA = FreeAir.GAMMA;

    public AirTank {
        Given.positive("volumeM3", volumeM3);
    }

    /** Time constant of choked discharge at an even temperature, s (handbook 1.6 case 1). */
    public double timeConstantS(final FlowPath path, final double airK) {
        return volumeM3 / (path.conductanceM3PerSPa() * AirReference.ANR.pressurePa()) * FlowPath.rootOfT0OverT(airK);
    }

    /** Tank pressure at which discharge into an outside pressure stops being choked, Pa abs; infinite for b = 0. */
    public static double endOfChokingPaAbs(final FlowPath path, final double outsidePaAbs) {
        Given.positive("outsidePaAbs", outsidePaAbs);
        return outsidePaAbs / path.criticalRatio();
    }

    /**
     * How long a tank at an even temperature takes to fall from one pressure to another: choked first, then along the
     * ellipse of ISO 6358 by Simpson's rule (handbook 1.6 cases 2 to 6). It reaches the outside pressure in finite
     * time, which a {@link FlowPath} with its straight line does not.
     *
     * @param fromPaAbs Pa abs, not below {@code toPaAbs}
     * @param toPaAbs Pa abs, not below the outside pressure
     * @param outsidePaAbs Pa abs, above 0; 101325 in a standard atmosphere
     * @param airK K, above 0
     * @return s
     */
    public double fallTimeS(
            final FlowPath path,
            final double fromPaAbs,
            final double toPaAbs,
            final double outsidePaAbs,
            final double airK) {
        final double chokedToPa = endOfChokingPaAbs(path, outsidePaAbs);
        Given.within("toPaAbs", toPaAbs, outsidePaAbs, fromPaAbs);
        Given.positive("fromPaAbs", fromPaAbs);
        final double timeConstantS = timeConstantS(path, airK);
        final double chokedS =
                fromPaAbs > chokedToPa ? chokedTimeS(timeConstantS, fromPaAbs, Math.max(toPaAbs, chokedToPa)) : 0;
        if (toPaAbs >= chokedToPa) {
            return chokedS;
        }
        final double b = path.criticalRatio();
        final double begin = angle(outsidePaAbs / Math.min(fromPaAbs, chokedToPa), b);
        return chokedS + timeConstantS * simpson(begin, angle(outsidePaAbs / toPaAbs, b), b);
    }

    /** Choked fall at an even temperature, s: timeConstantS ln(from / to) (handbook 1.6 cases 2, 3 and 10). */
    public static double chokedTimeS(final double timeConstantS, final double fromPaAbs, final double toPaAbs) {
        requireFall(timeConstantS, fromPaAbs, toPaAbs);
        return timeConstantS * StrictMath.log(fromPaAbs / toPaAbs);
    }

    /** Pressure after a choked fall at an even temperature, Pa abs (handbook 1.6). */
    public static double chokedPaAbs(final double timeConstantS, final double fromPaAbs, final double afterS) {
        requireFall(timeConstantS, fromPaAbs, fromPaAbs);
        return fromPaAbs * StrictMath.exp(-Given.notNegative("afterS", afterS) / timeConstantS);
    }

    /**
     * The tank's mass over the mass flow at the start, s: the time constant of adiabatic discharge (handbook 1.6 case
     * 7).
     *
     * @param fromPaAbs Pa abs, above 0
     * @param airK K, above 0
     * @param massFlowKgPerS flow out at that pressure and temperature, kg/s, above 0
     */
    public double massTimeConstantS(final double fromPaAbs, final double airK, final double massFlowKgPerS) {
        Given.positive("fromPaAbs", fromPaAbs);
        Given.positive("massFlowKgPerS", massFlowKgPerS);
        return FreeAir.massKg(volumeM3, fromPaAbs, airK) / massFlowKgPerS;
    }

    /** Choked fall without heat from the walls, s (handbook 1.6 case 8): good while the flow stays choked. */
    public static double adiabaticTimeS(final double massTimeConstantS, final double fromPaAbs, final double toPaAbs) {
        requireFall(massTimeConstantS, fromPaAbs, toPaAbs);
        final double stretch = StrictMath.pow(fromPaAbs / toPaAbs, (GAMMA - 1) / (2 * GAMMA)) - 1;
        return massTimeConstantS * 2 / (GAMMA - 1) * stretch;
    }

    /** Pressure after a choked fall without heat from the walls, Pa abs: the inverse of {@link #adiabaticTimeS}. */
    public static double adiabaticPaAbs(final double massTimeConstantS, final double fromPaAbs, final double afterS) {
        requireFall(massTimeConstantS, fromPaAbs, fromPaAbs);
        Given.notNegative("afterS", afterS);
        final double stretch = 1 + (GAMMA - 1) * afterS / (2 * massTimeConstantS);
        return fromPaAbs * StrictMath.pow(stretch, -2 * GAMMA / (GAMMA - 1));
    }

    /** Temperature of the gas left in a tank that fell without heat from the walls, K (handbook 1.6 case 9). */
    public static double adiabaticK(final double startK, final double fromPaAbs, final double toPaAbs) {
        Given.positive("startK", startK);
        Given.positive("fromPaAbs", fromPaAbs);
        Given.positive("toPaAbs", toPaAbs);
        return startK * StrictMath.pow(toPaAbs / fromPaAbs, (GAMMA - 1) / GAMMA);
    }

    /**
     * The tank that bridges a time in which more is drawn than delivered (handbook 1.6 case 11). Pressures may be gauge
     * or absolute, both alike.
     *
     * @param durationS s, above 0
     * @param netDrawM3PerS draw less delivery, m3/s of air at the intake's pressure, above 0
     * @param intakePaAbs pressure at which that air is counted, Pa abs, above 0
     * @param highPa pressure at the start, Pa
     * @param lowPa least pressure that still serves, Pa, below {@code highPa}
     */
    public static AirTank bridging(
            final double durationS,
            final double netDrawM3PerS,
            final double intakePaAbs,
            final double highPa,
            final double lowPa) {
        Given.positive("durationS", durationS);
        Given.positive("netDrawM3PerS", netDrawM3PerS);
        Given.positive("intakePaAbs", intakePaAbs);
        Given.positive("highPa - lowPa", highPa - lowPa);
        return new AirTank(durationS * netDrawM3PerS * intakePaAbs / (highPa - lowPa));
    }

    /**
     * How long a steady delivery (or draw) takes to raise (or lower) the pressure by this much (handbook 1.6 cases 12
     * and 13). Free air delivered falls with pressure; what a small piston machine's plate calls displacement is
     * often 30 to 40 % more than it delivers (common practice, no source).
     *
     * @param changePa Pa, 0 or more
     * @param steadyM3PerS m3/s counted at the intake's pressure, above 0
     * @param intakePaAbs Pa abs, above 0; 101325 for free air
     * @return s
     */
    public double steadyTimeS(final double changePa, final double steadyM3PerS, final double intakePaAbs) {
        Given.notNegative("changePa", changePa);
        Given.positive("steadyM3PerS", steadyM3PerS);
        Given.positive("intakePaAbs", intakePaAbs);
        return volumeM3 * changePa / (steadyM3PerS * intakePaAbs);
    }

    /**
     * Pressure after a draw with the compressor off, at an even 20 degC (handbook 1.6 case 14).
     *
     * @param startPaAbs Pa abs, 0 or more
     * @param drawnAnrM3 m3 ANR, 0 or more
     * @return Pa abs; 0 when the tank never held so much
     */
    public double afterDrawPaAbs(final double startPaAbs, final double drawnAnrM3) {
        Given.notNegative("startPaAbs", startPaAbs);
        Given.notNegative("drawnAnrM3", drawnAnrM3);
        return Math.max(0, startPaAbs - drawnAnrM3 * AirReference.ANR.pressurePa() / volumeM3);
    }

    /**
     * How fast the pressure rises while the flow into it is choked, at an even temperature (handbook 1.6 case 15):
     * holds until the tank is at b times the supply.
     *
     * @param supplyPaAbs Pa abs, above 0
     * @param airK K, above 0
     * @return Pa/s
     */
    public double chokedRisePaPerS(final FlowPath path, final double supplyPaAbs, final double airK) {
        return Given.positive("supplyPaAbs", supplyPaAbs) / timeConstantS(path, airK);
    }

    private static void requireFall(final double timeConstantS, final double fromPaAbs, final double toPaAbs) {
        Given.positive("timeConstantS", timeConstantS);
        Given.positive("fromPaAbs", fromPaAbs);
        Given.positive("toPaAbs", toPaAbs);
        Given.require(toPaAbs <= fromPaAbs, "toPaAbs", toPaAbs, "at most " + fromPaAbs);
    }

    /** Where the ellipse stands at a ratio of outside to tank; rounding may not carry it past its end. */
    private static double angle(final double ratio, final double criticalRatio) {
        return StrictMath.asin(Math.min(1, (ratio - criticalRatio) / (1 - criticalRatio)));
    }

    private static double simpson(final double begin, final double end, final double criticalRatio) {
        final double step = (end - begin) / SIMPSON_PIECES;
        double sum = slowness(begin, criticalRatio) + slowness(end, criticalRatio);
        for (int piece = 1; piece < SIMPSON_PIECES; piece++) {
            sum += (piece % 2 == 0 ? 2 : 4) * slowness(begin + piece * step, criticalRatio);
        }
        return sum * step / 3;
    }

    private static double slowness(final double angle, final double criticalRatio) {
        return (1 - criticalRatio) / (criticalRatio + (1 - criticalRatio) * StrictMath.sin(angle));
    }
}
