package slackwater.model.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A unit that a rig file may use: SI value = (number - zero) * factor. Factors are those of NIST SP 811 (2008), appendix B,
 * and exact unless a comment says otherwise; the US gallon is 231 cubic inches, the ounce a sixteenth of a pound.
 */
record Unit(String word, Dimension dimension, BigDecimal factor, BigDecimal zero) {
    static final String AWG = "AWG";

    private static final String MINUTE = "60";
    private static final String HOUR = "3600";
    private static final String POUND = "0.45359237";
    private static final String CUBIC_FOOT = "0.028316846592";
    private static final String GALLON = "0.003785411784";

    static final List<Unit> ALL = Stream.of(time(), lengths(), electrical(), mechanical(), volumes(), flows(), others())
            .flatMap(List::stream)
            .toList();

    static Optional<Unit> named(final String word) {
        return ALL.stream().filter(unit -> unit.word.equals(word)).findFirst();
    }

    static List<String> words(final Dimension dimension) {
        return ALL.stream()
                .filter(unit -> unit.dimension == dimension)
                .map(Unit::word)
                .toList();
    }

    BigDecimal toSi(final BigDecimal number) {
        return number.subtract(zero).multiply(factor);
    }

    private static List<Unit> time() {
        return List.of(
                unit("ms", Dimension.TIME, "0.001"),
                unit("s", Dimension.TIME, "1"),
                unit("min", Dimension.TIME, MINUTE),
                unit("h", Dimension.TIME, HOUR));
    }

    private static List<Unit> lengths() {
        return List.of(
                unit("mm", Dimension.LENGTH, "0.001"),
                unit("cm", Dimension.LENGTH, "0.01"),
                unit("m", Dimension.LENGTH, "1"),
                unit("in", Dimension.LENGTH, "0.0254"),
                unit("ft", Dimension.LENGTH, "0.3048"));
    }

    private static List<Unit> electrical() {
        return List.of(
                unit("mA", Dimension.CURRENT, "0.001"),
                unit("A", Dimension.CURRENT, "1"),
                unit("mV", Dimension.VOLTAGE, "0.001"),
                unit("V", Dimension.VOLTAGE, "1"),
                unit("ohm", Dimension.RESISTANCE, "1"),
                unit("W", Dimension.POWER, "1"),
                unit("kW", Dimension.POWER, "1000"));
    }

    private static List<Unit> mechanical() {
        return List.of(
                unit("g", Dimension.MASS, "0.001"),
                unit("kg", Dimension.MASS, "1"),
                unit("lb", Dimension.MASS, POUND),
                unit("oz", Dimension.MASS, "0.028349523125"),
                unit("Pa", Dimension.PRESSURE, "1"),
                unit("kPa", Dimension.PRESSURE, "1000"),
                unit("bar", Dimension.PRESSURE, "100000"),
                // Rounded to seven digits, as published.
                unit("psi", Dimension.PRESSURE, "6894.757"),
                unit("J", Dimension.ENERGY, "1"),
                unit("N", Dimension.FORCE, "1"),
                // Rounded to seven digits, as published.
                unit("lbf", Dimension.FORCE, "4.448222"));
    }

    private static List<Unit> volumes() {
        return List.of(
                unit("ml", Dimension.VOLUME, "0.000001"),
                unit("l", Dimension.VOLUME, "0.001"),
                unit("gal", Dimension.VOLUME, GALLON),
                unit("cm3", Dimension.VOLUME, "0.000001"),
                unit("in3", Dimension.VOLUME, "0.000016387064"),
                unit("ft3", Dimension.VOLUME, CUBIC_FOOT));
    }

    private static List<Unit> flows() {
        return List.of(
                per("l/min", Dimension.VOLUME_FLOW, "0.001", MINUTE),
                per("ml/min", Dimension.VOLUME_FLOW, "0.000001", MINUTE),
                per("cfm", Dimension.VOLUME_FLOW, CUBIC_FOOT, MINUTE),
                per("l/h", Dimension.VOLUME_FLOW, "0.001", HOUR),
                per("ml/h", Dimension.VOLUME_FLOW, "0.000001", HOUR),
                per("gal/h", Dimension.VOLUME_FLOW, GALLON, HOUR),
                per("m3/h", Dimension.VOLUME_FLOW, "1", HOUR),
                per("g/min", Dimension.MASS_FLOW, "0.001", MINUTE),
                per("g/h", Dimension.MASS_FLOW, "0.001", HOUR),
                per("kg/h", Dimension.MASS_FLOW, "1", HOUR));
    }

    private static List<Unit> others() {
        return List.of(
                unit("m/s", Dimension.SPEED, "1"),
                per("km/h", Dimension.SPEED, "1000", HOUR),
                unit("mph", Dimension.SPEED, "0.44704"),
                unit("ft/s", Dimension.SPEED, "0.3048"),
                unit("Hz", Dimension.FREQUENCY, "1"),
                unit("deg", Dimension.ANGLE, "1"),
                unit("degC", Dimension.TEMPERATURE, "1"),
                new Unit("degF", Dimension.TEMPERATURE, divide("5", "9"), new BigDecimal(32)),
                unit("%", Dimension.RATIO, "0.01"),
                unit("mm2", Dimension.AREA, "0.000001"),
                // A gauge is a number on a scale: its area comes from WireGauge, not from this factor.
                unit(AWG, Dimension.AREA, "1"));
    }

    private static Unit unit(final String word, final Dimension dimension, final String factor) {
        return new Unit(word, dimension, new BigDecimal(factor), BigDecimal.ZERO);
    }

    private static Unit per(final String word, final Dimension dimension, final String above, final String below) {
        return new Unit(word, dimension, divide(above, below), BigDecimal.ZERO);
    }

    private static BigDecimal divide(final String above, final String below) {
        return new BigDecimal(above).divide(new BigDecimal(below), MathContext.DECIMAL128);
    }
}
