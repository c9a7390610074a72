package slackwater.model.engineering;

/**
 * A liquid of which fog is made (handbook 2.1). The heat of vaporisation falls as a liquid gets warmer: the value of
 * propylene glycol near its boiling point is roughly a quarter lower than the one at 25 degC that stands here (by
 * Watson's rule, from memory), so a budget made with it errs on the side of more heat.
 *
 * @param boilsC boiling point at 101325 Pa, degrees Celsius
 * @param specificHeatJPerKgK of the liquid
 * @param vaporisationJPerKg heat to turn the liquid into vapour
 */
public record Liquid(double boilsC, double specificHeatJPerKgK, double vaporisationJPerKg) {
    /** Molar mass of propylene glycol (handbook 2.1, NIST Chemistry WebBook). */
    static final double PROPYLENE_GLYCOL_KG_PER_MOL = 0.076_095;

    /** From memory (steam tables). */
    public static final Liquid WATER = new Liquid(100, 4_190, 2_257e3);

    /** NIST Chemistry WebBook: 460 K within 2 K; 189.9 J/(mol K) and 67 kJ/mol within 8, both near 25 degC. */
    public static final Liquid PROPYLENE_GLYCOL =
            new Liquid(186.85, 189.9 / PROPYLENE_GLYCOL_KG_PER_MOL, 67e3 / PROPYLENE_GLYCOL_KG_PER_MOL);

    /** From memory. */
    public static final Liquid TRIETHYLENE_GLYCOL = new Liquid(286.5, 2_200, 410e3);

    /** From memory. */
    public static final Liquid GLYCEROL = new Liquid(290, 2_400, 975e3);

    public Liquid {
        Given.temperature("boilsC", boilsC);
        Given.positive("specificHeatJPerKgK", specificHeatJPerKgK);
        Given.positive("vaporisationJPerKg", vaporisationJPerKg);
    }

    /**
     * Heat to warm the liquid to its boiling point and to vaporise it, J/kg (handbook 2.2). Superheat is neglected.
     *
     * @param fromC at most the boiling point
     */
    public double heatJPerKg(final double fromC) {
        Given.within("fromC", fromC, -50, boilsC);
        return specificHeatJPerKgK * (boilsC - fromC) + vaporisationJPerKg;
    }
}
