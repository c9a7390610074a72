package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 1.1: theoretical force, ISO 15552 and ISO 6432 bores and rods. */
class CylinderForceTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.1.1", () -> cylinder(16, 5, 100).pullN(600_000));
        COMPUTED.put("1.1.2", () -> cylinder(16, 5, 100).pushN(600_000));
        COMPUTED.put("1.1.3", () -> cylinder(16, 6, 100).pullN(600_000));
        COMPUTED.put("1.1.4", () -> cylinder(20, 8, 100).pushN(600_000));
        COMPUTED.put("1.1.5", () -> cylinder(20, 8, 100).pullN(600_000));
        COMPUTED.put("1.1.6", () -> cylinder(25, 10, 100).pushN(600_000));
        COMPUTED.put("1.1.7", () -> cylinder(25, 10, 100).pullN(600_000));
        COMPUTED.put("1.1.8", () -> cylinder(32, 12, 100).pushN(600_000));
        COMPUTED.put("1.1.9", () -> cylinder(32, 12, 100).pullN(600_000));
        COMPUTED.put("1.1.10", () -> cylinder(40, 16, 100).pushN(600_000));
        COMPUTED.put("1.1.11", () -> cylinder(40, 16, 100).pullN(600_000));
        COMPUTED.put("1.1.12", () -> cylinder(50, 20, 100).pushN(600_000));
        COMPUTED.put("1.1.13", () -> cylinder(50, 20, 100).pullN(600_000));
        COMPUTED.put("1.1.14", () -> cylinder(63, 20, 100).pushN(600_000));
        COMPUTED.put("1.1.15", () -> cylinder(63, 20, 100).pullN(600_000));
        COMPUTED.put("1.1.16", () -> cylinder(40, 16, 100).pushN(250_000));
        COMPUTED.put("1.1.17", () -> cylinder(63, 20, 100).pushAreaM2() * 1e6);
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.1", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @Test
    void aRodThroughOneSideOnlyPushesHarderThanItPulls() {
        assertThat(cylinder(25, 10, 50).pullN(400_000))
                .isLessThan(cylinder(25, 10, 50).pushN(400_000));
        assertThat(cylinder(25, 0, 50).pullN(400_000))
                .isEqualTo(cylinder(25, 0, 50).pushN(400_000));
    }

    /** The corner case of the trade: 32 mm at 4 bar is almost three times the force of 25 mm at 2.5 bar. */
    @Test
    void aWiderBoreAtAHigherPressureIsMuchStronger() {
        assertThat(cylinder(32, 12, 100).pushN(400_000)).isEqualTo(321.7, within(0.05));
        assertThat(cylinder(25, 10, 100).pushN(250_000)).isEqualTo(122.7, within(0.05));
    }

    @Test
    void noPressureIsNoForce() {
        assertThat(cylinder(25, 10, 50).pushN(0)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 100, boreM=0.0 is not above 0",
        "-1, 0, 100, boreM=-0.001 is not above 0",
        "NaN, 0, 100, boreM=NaN is not above 0",
        "10, 10, 100, rodM=0.01 is not 0 or more and below 0.01",
        "10, -1, 100, rodM=-0.001 is not 0 or more and below 0.01",
        "10, 4, 0, travelM=0.0 is not above 0"
    })
    void aCylinderThatCannotBeIsRefused(
            final double boreMm, final double rodMm, final double travelMm, final String message) {
        assertThatThrownBy(() -> cylinder(boreMm, rodMm, travelMm))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    @Test
    void aNegativePressureIsRefused() {
        assertThatThrownBy(() -> cylinder(25, 10, 50).pushN(-1)).hasMessage("gaugePa=-1.0 is not 0 or more");
        assertThatThrownBy(() -> cylinder(25, 10, 50).pullN(Double.NaN)).hasMessage("gaugePa=NaN is not 0 or more");
    }

    private static Cylinder cylinder(final double boreMm, final double rodMm, final double travelMm) {
        return new Cylinder(boreMm / 1_000, rodMm / 1_000, travelMm / 1_000);
    }
}
