package slackwater.model.engineering;

/** How fast a cylinder moves and what it brings to the end of its travel (handbook 1.9; mechanics, from memory). */
public final class CylinderMotion {
    /** Speed at the end over mean speed, without a cushion (handbook 1.9 case 9, common practice, no source). */
    public static final UsualRange IMPACT_OVER_MEAN_SPEED = new UsualRange(1.3, 1.5);
    /** What seals take of the theoretical force at 6 bar (handbook 1.9 case 10, common practice, no source). */
    public static final UsualRange SEAL_FRICTION_SHARE = new UsualRange(0.05, 0.15);

    private CylinderMotion() {}

    /** Energy of a moving mass, J (case 1): kg above 0, m/s 0 or more. */
    public static double kineticEnergyJ(final double massKg, final double speedMPerS) {
        Given.positive("massKg", massKg);
        Given.notNegative("speedMPerS", speedMPerS);
        return massKg * speedMPerS * speedMPerS / 2;
    }

    /** The speed at which a mass has an energy, m/s (handbook 1.11 cases 14 and 15): kg above 0, J 0 or more. */
    public static double speedMPerS(final double massKg, final double energyJ) {
        Given.positive("massKg", massKg);
        Given.notNegative("energyJ", energyJ);
        return StrictMath.sqrt(2 * energyJ / massKg);
    }

    /**
     * Mean force in a cushion that stops the load (cases 2 and 3).
     *
     * @param energyJ J, 0 or more
     * @param cushionM way over which it stops, m, above 0
     * @param driveN force that still drives meanwhile, N, 0 or more
     * @return N
     */
    public static double cushionN(final double energyJ, final double cushionM, final double driveN) {
        Given.notNegative("energyJ", energyJ);
        Given.positive("cushionM", cushionM);
        return energyJ / cushionM + Given.notNegative("driveN", driveN);
    }

    /**
     * Speed after a run-up under an even force (case 4).
     *
     * @param netN force left after load and friction, N, above 0
     * @param massKg kg, above 0
     * @param wayM m, 0 or more
     * @return m/s
     */
    public static double runUpMPerS(final double netN, final double massKg, final double wayM) {
        Given.positive("netN", netN);
        return speedMPerS(massKg, netN * Given.notNegative("wayM", wayM));
    }

    /** Time of that run-up, s (case 5). */
    public static double runUpS(final double netN, final double massKg, final double wayM) {
        Given.positive("netN", netN);
        Given.positive("massKg", massKg);
        return StrictMath.sqrt(2 * Given.notNegative("wayM", wayM) * massKg / netN);
    }

    /**
     * Speed that a throttle in the exhaust allows while it is choked, at 20 degC; whatever the pressure (case 6).
     *
     * @param exhaust the throttle, with what else stands in the exhaust's way
     * @param areaM2 the piston's area on the exhausting side, m2, above 0
     * @return m/s
     */
    public static double meterOutMPerS(final FlowPath exhaust, final double areaM2) {
        Given.positive("areaM2", areaM2);
        return exhaust.conductanceM3PerSPa() * AirReference.ANR.pressurePa() / areaM2;
    }

    /**
     * Speed that a throttle in the supply allows while it is choked, at 20 degC (case 7).
     *
     * @param supplyPaAbs Pa abs, above 0
     * @param chamberPaAbs Pa abs in the driving chamber, above 0, at most b times the supply: else it is not choked
     * @param areaM2 the piston's area on the driving side, m2, above 0
     * @return m/s
     */
    public static double meterInMPerS(
            final FlowPath supply, final double supplyPaAbs, final double chamberPaAbs, final double areaM2) {
        Given.positive("supplyPaAbs", supplyPaAbs);
        Given.positive("chamberPaAbs", chamberPaAbs);
        final double chokedToPa = supply.criticalRatio() * supplyPaAbs;
        Given.require(chamberPaAbs <= chokedToPa, "chamberPaAbs", chamberPaAbs, "at most b * supply = " + chokedToPa);
        return meterOutMPerS(supply, areaM2) * supplyPaAbs / chamberPaAbs;
    }
}
