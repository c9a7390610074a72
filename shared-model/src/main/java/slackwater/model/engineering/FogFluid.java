package slackwater.model.engineering;

/**
 * Fog fluid: water with propylene glycol (handbook 2.2). Superheat of the vapour and the heat of mixing are neglected.
 *
 * @param glycolShare mass of glycol in the mass of the mix, 0 to 1
 */
public record FogFluid(double glycolShare) {
    /** A fifth of glycol: a thin, quickly vanishing fog (handbook 2.2 case 4). */
    public static final FogFluid USUAL = new FogFluid(0.2);

    /** Density of {@link #USUAL} at 20 degC, kg/m3 (from memory). */
    public static final double USUAL_DENSITY_KG_PER_M3 = 1_015;

    private static final double WATER_KG_PER_MOL = 0.018_015;
    private static final double PA_PER_MM_HG = 133.322;
    private static final double BISECTED_C = 1e-9;

    public FogFluid {
        Given.within("glycolShare", glycolShare, 0, 1);
    }

    /** Heat that turns a kilogram of the fluid into vapour, J/kg. */
    public double heatJPerKg(final double fromC) {
        return (1 - glycolShare) * Liquid.WATER.heatJPerKg(fromC)
                + glycolShare * Liquid.PROPYLENE_GLYCOL.heatJPerKg(fromC);
    }

    /** The flow that a power vaporises for ever, kg/s: a burst draws on the heat of the block beside it. */
    public double steadyFlowKgPerS(final double powerW, final double fromC) {
        return Given.notNegative("powerW", powerW) / heatJPerKg(fromC);
    }

    /** The power that a flow takes, W. */
    public double powerW(final double flowKgPerS, final double fromC) {
        return Given.notNegative("flowKgPerS", flowKgPerS) * heatJPerKg(fromC);
    }

    /** Molecules of water among all molecules, 0 to 1. */
    public double waterMoleFraction() {
        final double waterMol = (1 - glycolShare) / WATER_KG_PER_MOL;
        return waterMol / (waterMol + glycolShare / Liquid.PROPYLENE_GLYCOL_KG_PER_MOL);
    }

    /**
     * Where the mix begins to boil, degrees Celsius: Raoult's law with Antoine's vapour pressures (constants from
     * memory), within 2 K of measured data. Far below the boiling point of glycol, which rises as the water leaves.
     *
     * @param pressurePa 20 kPa to 300 kPa
     */
    public double bubblePointC(final double pressurePa) {
        Given.within("pressurePa", pressurePa, 20e3, 300e3);
        double lowC = 0;
        double highC = 300;
        while (highC - lowC > BISECTED_C) {
            final double middleC = (lowC + highC) / 2;
            if (vapourPressurePa(middleC) < pressurePa) {
                lowC = middleC;
            } else {
                highC = middleC;
            }
        }
        return (lowC + highC) / 2;
    }

    /**
     * How long a pump runs on a volume of fluid, seconds.
     *
     * @param densityKgPerM3 see {@link #USUAL_DENSITY_KG_PER_M3}
     */
    public static double pumpTimeS(final double volumeM3, final double densityKgPerM3, final double flowKgPerS) {
        Given.notNegative("volumeM3", volumeM3);
        Given.positive("densityKgPerM3", densityKgPerM3);
        return volumeM3 * densityKgPerM3 / Given.positive("flowKgPerS", flowKgPerS);
    }

    private double vapourPressurePa(final double temperatureC) {
        final double waterMmHg = antoineMmHg(8.14019 - 1810.94 / (temperatureC + 244.485));
        final double glycolMmHg = antoineMmHg(8.2082 - 2085.9 / (temperatureC + 203.540));
        final double water = waterMoleFraction();
        return PA_PER_MM_HG * (water * waterMmHg + (1 - water) * glycolMmHg);
    }

    private static double antoineMmHg(final double exponent) {
        return StrictMath.pow(10, exponent);
    }
}
