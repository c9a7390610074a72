package slackwater.simulator.budget;

/** A unit in which a budget speaks, with what one of it is in SI. */
public enum Measure {
    BAR("bar", 100_000),
    LITRE("l", 0.001),
    LITRE_PER_MINUTE("l/min", 0.001 / 60),
    MILLILITRE("ml", 1e-6),
    SECOND("s", 1),
    MINUTE("min", 60),
    PER_HOUR("an hour", 1),
    METRE("m", 1),
    MILLIMETRE("mm", 0.001),
    METRE_PER_SECOND("m/s", 1),
    NEWTON("N", 1),
    JOULE("J", 1),
    AMPERE("A", 1),
    MILLIAMPERE("mA", 0.001),
    WATT("W", 1),
    GRAM("g", 0.001),
    KILOGRAM_PER_HOUR("kg/h", 1.0 / 3600),
    CELSIUS("degC", 1),
    GRAM_PER_M3("g/m3", 0.001),
    PERCENT("%", 0.01),
    PIECE("", 1),
    FLASH("flashes", 1);

    private final String word;
    private final double si;

    Measure(final String word, final double si) {
        this.word = word;
        this.si = si;
    }

    /** As it stands behind a number; empty for a bare count. */
    public String word() {
        return word;
    }

    /** One of this unit in SI. */
    public double si() {
        return si;
    }
}
