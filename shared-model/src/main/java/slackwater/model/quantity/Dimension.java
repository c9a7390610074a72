package slackwater.model.quantity;

/** What a quantity measures, with the unit in which it is kept inside. */
public enum Dimension {
    TIME("s"),
    LENGTH("m"),
    MASS("kg"),
    /** Gauge pressure. */
    PRESSURE("Pa"),
    CURRENT("A"),
    VOLTAGE("V"),
    RESISTANCE("ohm"),
    POWER("W"),
    ENERGY("J"),
    FORCE("N"),
    VOLUME("m3"),
    VOLUME_FLOW("m3/s"),
    MASS_FLOW("kg/s"),
    SPEED("m/s"),
    FREQUENCY("Hz"),
    ANGLE("deg"),
    TEMPERATURE("degC"),
    RATIO("1"),
    /** Cross-section of a wire, from mm2 or AWG. */
    AREA("m2");

    private final String unit;

    Dimension(final String unit) {
        this.unit = unit;
    }

    /** The unit of {@link Quantity#si()}. */
    public String unit() {
        return unit;
    }
}
