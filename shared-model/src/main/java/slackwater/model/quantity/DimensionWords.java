package slackwater.model.quantity;

import java.util.Map;
import java.util.Optional;

/** How to speak about a dimension to a person. */
record DimensionWords(String noun, String example, boolean mayBeNegative) {
    private static final Map<String, String> OFTEN_WRITTEN = Map.ofEntries(
            Map.entry("sec", "s"),
            Map.entry("secs", "s"),
            Map.entry("second", "s"),
            Map.entry("seconds", "s"),
            Map.entry("minute", "min"),
            Map.entry("minutes", "min"),
            Map.entry("hr", "h"),
            Map.entry("hrs", "h"),
            Map.entry("hour", "h"),
            Map.entry("hours", "h"),
            Map.entry("C", "degC"),
            Map.entry("F", "degF"),
            Map.entry("°C", "degC"),
            Map.entry("°F", "degF"),
            Map.entry("°", "deg"),
            Map.entry("Ω", "ohm"),
            Map.entry("amp", "A"),
            Map.entry("amps", "A"),
            Map.entry("volt", "V"),
            Map.entry("volts", "V"),
            Map.entry("inch", "in"),
            Map.entry("\"", "in"),
            Map.entry("'", "ft"),
            Map.entry("L", "l"),
            Map.entry("CFM", "cfm"),
            Map.entry("lbs", "lb"),
            Map.entry("percent", "%"));

    static DimensionWords of(final Dimension dimension) {
        return switch (dimension) {
            case TIME -> new DimensionWords("a time", "2.5 s", false);
            case LENGTH -> new DimensionWords("a length", "32 mm", true);
            case MASS -> new DimensionWords("a mass", "2.5 kg", false);
            case PRESSURE -> new DimensionWords("a pressure", "6 bar", false);
            case CURRENT -> new DimensionWords("a current", "0.4 A", false);
            case VOLTAGE -> new DimensionWords("a voltage", "12 V", true);
            case RESISTANCE -> new DimensionWords("a resistance", "470 ohm", false);
            case POWER -> new DimensionWords("a power", "60 W", false);
            case ENERGY -> new DimensionWords("an energy", "4 J", false);
            case FORCE -> new DimensionWords("a force", "150 N", false);
            case VOLUME -> new DimensionWords("a volume", "1.5 l", false);
            case VOLUME_FLOW -> new DimensionWords("a flow of volume", "90 l/min", false);
            case MASS_FLOW -> new DimensionWords("a flow of mass", "12 g/min", false);
            case SPEED -> new DimensionWords("a speed", "1.4 m/s", false);
            case FREQUENCY -> new DimensionWords("a frequency", "3 Hz", false);
            case ANGLE -> new DimensionWords("an angle", "90 deg", true);
            case TEMPERATURE -> new DimensionWords("a temperature", "8 degC", true);
            case RATIO -> new DimensionWords("a share", "50 %", false);
            case AREA -> new DimensionWords("a cross-section", "1.5 mm2", false);
        };
    }

    /** The unit that people mean when they write this. */
    static Optional<String> meant(final String word) {
        return Optional.ofNullable(OFTEN_WRITTEN.get(word));
    }
}
