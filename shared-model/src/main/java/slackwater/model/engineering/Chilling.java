package slackwater.model.engineering;

/**
 * Air that flows over ice or dry ice: the heat to take from it and what that melts (handbook 2.5). Dry ice turns into a
 * gas that displaces the air people breathe and gathers in hollows: outdoors only. Its own weight in the layer is not
 * counted.
 *
 * @param air before it is chilled
 * @param flowM3PerS measured before it is chilled
 */
public record Chilling(MoistAir air, double flowM3PerS) {
    /** Heat that melts a kilogram of ice, J/kg. */
    public static final double ICE_J_PER_KG = 334e3;

    /** Heat that turns a kilogram of dry ice into gas, J/kg (from memory). */
    public static final double DRY_ICE_J_PER_KG = 571e3;

    private static final double DRY_ICE_C = -78.5;
    private static final double DRY_ICE_GAS_J_PER_KG_K = 820;

    public Chilling {
        Given.notNegative("flowM3PerS", flowM3PerS);
    }

    /** Heat to take so that the air cools, without the water that condenses, W. */
    public double sensibleW(final double toC) {
        final double cooledK = air.temperatureC() - air.chilledTo(toC).temperatureC();
        return flowM3PerS * air.heatCapacityJPerM3K() * cooledK;
    }

    /** Heat of the water that condenses on the way, W: 0 above the dew point. */
    public double condensationW(final double toC) {
        final double dryKgPerM3 = air.densityKgPerM3() / (1 + air.vapourShare());
        final double condensed = air.vapourShare() - air.chilledTo(toC).vapourShare();
        return flowM3PerS * dryKgPerM3 * Math.max(0, condensed) * MoistAir.EVAPORATION_J_PER_KG;
    }

    /** All heat to take from the air, W. */
    public double heatW(final double toC) {
        return sensibleW(toC) + condensationW(toC);
    }

    /** Ice that a heat melts, kg/s; the melt water runs off unwarmed. */
    public static double iceKgPerS(final double heatW) {
        return Given.notNegative("heatW", heatW) / ICE_J_PER_KG;
    }

    /**
     * Dry ice that a heat turns into gas, kg/s, the gas warmed to the air's temperature (from memory: sublimation at
     * -78.5 degC, 820 J/(kg K) for the gas).
     *
     * @param toC the temperature of the chilled air, at least -78.5
     */
    public static double dryIceKgPerS(final double heatW, final double toC) {
        Given.within("toC", toC, DRY_ICE_C, 50);
        return Given.notNegative("heatW", heatW) / (DRY_ICE_J_PER_KG + DRY_ICE_GAS_J_PER_KG_K * (toC - DRY_ICE_C));
    }
}
