package slackwater.model.engineering;

/**
 * A coil on direct current by what is printed on it (handbook 3.6): volts and watts at 20 degC.
 *
 * @param supplyV direct current
 * @param powerW cold
 */
public record RatedCoil(double supplyV, double powerW) {

    public RatedCoil {
        Given.positive("supplyV", supplyV);
        Given.positive("powerW", powerW);
    }

    /** Current when cold, amperes. */
    public double currentA() {
        return powerW / supplyV;
    }

    /** Resistance when cold. */
    public double resistanceOhm() {
        return supplyV * supplyV / powerW;
    }

    /** Current when the copper has warmed, amperes: a hot coil pulls weaker, so it needs a margin. */
    public double currentA(final double coilC) {
        return currentA() / Copper.temperatureFactor(coilC);
    }

    /**
     * What the supply of several such coils must give, amperes.
     *
     * @param margin in parts of their current, such as 0.2
     */
    public double supplyA(final int coils, final double margin) {
        return Given.notNegative("coils", coils) * currentA() * (1 + Given.notNegative("margin", margin));
    }
}
