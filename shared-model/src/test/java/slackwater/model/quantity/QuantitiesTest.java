package slackwater.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantitiesTest {
    private static final double RELATIVE = 1e-12;

    /** Factors of NIST SP 811 (2008), appendix B.8; the gallon is the US liquid gallon of 231 in3. */
    @ParameterizedTest
    @CsvSource({
        "1 in, LENGTH, 0.0254",
        "1 ft, LENGTH, 0.3048",
        "32 mm, LENGTH, 0.032",
        "-1.5 m, LENGTH, -1.5",
        "1 lb, MASS, 0.45359237",
        "16 oz, MASS, 0.45359237",
        "1 psi, PRESSURE, 6894.757",
        "90 psi, PRESSURE, 620528.13",
        "6 bar, PRESSURE, 600000",
        "1 lbf, FORCE, 4.448222",
        "1 gal, VOLUME, 0.003785411784",
        "231 in3, VOLUME, 0.003785411784",
        "1 ft3, VOLUME, 0.028316846592",
        "60 cfm, VOLUME_FLOW, 0.028316846592",
        "90 l/min, VOLUME_FLOW, 0.0015",
        "350 ml/h, VOLUME_FLOW, 9.722222222222222e-8",
        "12 g/min, MASS_FLOW, 0.0002",
        "3.6 km/h, SPEED, 1",
        "1 mph, SPEED, 0.44704",
        "1 ft/s, SPEED, 0.3048",
        "50 %, RATIO, 0.5",
        "32 degF, TEMPERATURE, 0",
        "212 degF, TEMPERATURE, 100",
        "-40 degF, TEMPERATURE, -40",
        "470 ohm, RESISTANCE, 470",
        "1.5 mm2, AREA, 1.5e-6",
        "400 mA, CURRENT, 0.4",
        "0.4 A, CURRENT, 0.4",
        "90 deg, ANGLE, 90"
    })
    void publishedFactorsAreKept(final String text, final Dimension dimension, final double si) {
        final Quantity quantity = value(text, dimension);
        assertThat(quantity.si()).isCloseTo(si, within(Math.abs(si) * RELATIVE + 1e-13));
        assertThat(quantity.dimension()).isEqualTo(dimension);
        assertThat(quantity.text()).isEqualTo(text);
    }

    /** Diameters of the table in ASTM B258, rounded there to 0.001 mm or finer; areas follow from them (from memory). */
    @ParameterizedTest
    @CsvSource({"36 AWG, 0.127, 1e-9", "0 AWG, 8.251, 0.001", "14 AWG, 1.628, 0.001", "18 AWG, 1.024, 0.001"})
    void wireGaugesHaveTheirAreas(final String text, final double diameterMm, final double tolerance) {
        final double diameter = Math.sqrt(value(text, Dimension.AREA).si() * 4 / Math.PI) * 1e3;
        assertThat(diameter).isCloseTo(diameterMm, within(tolerance));
    }

    @ParameterizedTest
    @CsvSource({"40 AWG, true", "41 AWG, false", "0 AWG, true", "14.5 AWG, false", "99999999999 AWG, false"})
    void onlyGaugesFrom0To40Exist(final String text, final boolean isRight) {
        assertThat(Quantities.parse(text, Dimension.AREA) instanceof Parsed.Value)
                .isEqualTo(isRight);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2,5 s|1|1|\"2,5 s\" has a decimal comma",
                "1e3 s|1|1|\"1e3 s\" has an exponent",
                "1E3 s|1|1|\"1E3 s\" has an exponent",
                "1_000 ms|1|1|\"1_000 ms\" has its digits in groups",
                "1 000 ms|1|1|\"1 000 ms\" has its digits in groups",
                "5|0|1|\"5\" has no unit",
                "s|0|1|\"s\" does not begin with a number",
                "5. s|1|1|\"5. s\" has a point without digits on both sides",
                ".5 s|0|1|\".5 s\" has a point without digits on both sides",
                "2  s|1|1|there is more than one space before the unit",
                "2 S|2|1|there is no unit \"S\"",
                "2 s s|2|3|there is no unit \"s s\"",
                "2 bar|2|3|\"bar\" measures a pressure, but a time is wanted",
                "-1 s|0|1|\"-1 s\" is negative",
                "367000000 s|0|9|\"367000000 s\" is longer than a year",
                "0.0000001 ms|0|9|\"0.0000001 ms\" is finer than a nanosecond",
                "1234567890123456789012345678901 s|0|31|the number has more than 30 characters"
            })
    void aTimeThatCouldBeReadTwoWaysIsRefused(
            final String text, final int offset, final int length, final String words) {
        assertThat(Quantities.duration(text)).isInstanceOfSatisfying(Parsed.Mistake.class, mistake -> {
            assertThat(mistake.words()).isEqualTo(words);
            assertThat(mistake.offset()).isEqualTo(offset);
            assertThat(mistake.length()).isEqualTo(length);
        });
    }

    @Test
    void anEmptyTextAndASpaceBeforeOrAfterAreRefused() {
        for (final String text : new String[] {"", " ", " 5 s", "5 s ", "5 ", "\t5 s", "5\ts", "٥ s"}) {
            assertThat(Quantities.duration(text)).as(text).isInstanceOf(Parsed.Mistake.class);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "2.5 s, 2500000000",
        "2.5s, 2500000000",
        "+1 ms, 1000000",
        "0.000001 ms, 1",
        "0.1 s, 100000000",
        "0 s, 0",
        "1.1 min, 66000000000",
        "2 h, 7200000000000",
        "8784 h, 31622400000000000"
    })
    void timesAreExactToTheNanosecond(final String text, final long ns) {
        assertThat(Quantities.duration(text)).isEqualTo(new Parsed.Value<>(Duration.ofNanos(ns)));
    }

    @ParameterizedTest
    @CsvSource({
        "8 C, TEMPERATURE, did you mean \"degC\"?",
        "8 F, TEMPERATURE, did you mean \"degF\"?",
        "8 seconds, TIME, did you mean \"s\"?",
        "8 baar, PRESSURE, did you mean \"bar\"?",
        "8 furlongs, SPEED, 'add one of: m/s, km/h, mph, ft/s (for example \"1.4 m/s\")'"
    })
    void anUnknownUnitGetsTheNearestOne(final String text, final Dimension dimension, final String fix) {
        assertThat(Quantities.parse(text, dimension))
                .isInstanceOfSatisfying(
                        Parsed.Mistake.class,
                        mistake -> assertThat(mistake.fix()).isEqualTo(fix));
    }

    @Test
    void onlyWhatCanBeBelowZeroMayBeNegative() {
        assertThat(Quantities.parse("-5 degC", Dimension.TEMPERATURE)).isInstanceOf(Parsed.Value.class);
        assertThat(Quantities.parse("-5 deg", Dimension.ANGLE)).isInstanceOf(Parsed.Value.class);
        assertThat(Quantities.parse("-5 kg", Dimension.MASS)).isInstanceOf(Parsed.Mistake.class);
        assertThat(Quantities.parse("-5 A", Dimension.CURRENT)).isInstanceOf(Parsed.Mistake.class);
    }

    @Test
    void everyDimensionHasAnExampleThatItReads() {
        for (final Dimension dimension : Dimension.values()) {
            final String example = DimensionWords.of(dimension).example();
            assertThat(Quantities.parse(example, dimension)).as(example).isInstanceOf(Parsed.Value.class);
        }
    }

    @Test
    void aQuantityOfAnyDimensionKeepsTheOneOfItsUnit() {
        assertThat(Quantities.parseAny("14 AWG"))
                .isInstanceOfSatisfying(
                        Parsed.Value.class,
                        value -> assertThat(((Quantity) value.value()).dimension())
                                .isEqualTo(Dimension.AREA));
        assertThat(Quantities.parseAny("14 parrots")).isInstanceOf(Parsed.Mistake.class);
    }

    private static Quantity value(final String text, final Dimension dimension) {
        final Parsed<Quantity> parsed = Quantities.parse(text, dimension);
        assertThat(parsed).isInstanceOf(Parsed.Value.class);
        return ((Parsed.Value<Quantity>) parsed).value();
    }
}
