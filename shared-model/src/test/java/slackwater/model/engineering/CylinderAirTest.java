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
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 1.2: free air for a stroke; case 1 is a published worked example. */
class CylinderAirTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.2.1", () -> 1_000 * cylinder(50, 20, 100).doubleAirM3(600_000, AirReference.FREE_AIR));
        COMPUTED.put("1.2.2", () -> 10 * 1_000 * cylinder(50, 20, 100).doubleAirM3(600_000, AirReference.FREE_AIR));
        COMPUTED.put("1.2.3", () -> 1_000 * cylinder(32, 12, 100).pushAirM3(600_000, AirReference.ANR));
        COMPUTED.put("1.2.4", () -> 1_000 * cylinder(32, 12, 100).pullAirM3(600_000, AirReference.ANR));
        COMPUTED.put("1.2.5", () -> 1_000 * cylinder(32, 12, 100).doubleAirM3(600_000, AirReference.ANR));
        COMPUTED.put("1.2.6", () -> 1_000 * cylinder(63, 20, 300).doubleAirM3(600_000, AirReference.ANR));
        COMPUTED.put("1.2.7", () -> 1_000 * cylinder(25, 10, 50).pushAirM3(400_000, AirReference.ANR));
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.2", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    /** Handbook 1.2, in words: a tube is not emptied below the atmosphere, so 0.1 l at 6 bar cost 0.6 l, not 0.7. */
    @Test
    void deadVolumeCountsItsGaugePressureOnly() {
        assertThat(Cylinder.deadAirM3(1e-4, 600_000, AirReference.ANR)).isEqualTo(6e-4, within(1e-15));
        assertThat(Cylinder.deadAirM3(1e-4, 0, AirReference.ANR)).isZero();
    }

    @Test
    void withoutPressureACylinderStillMovesItsOwnVolumeOfAir() {
        assertThat(cylinder(32, 12, 100).pushAirM3(0, AirReference.FREE_AIR)).isEqualTo(8.04248e-5, within(1e-9));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Cylinder.deadAirM3(-1, 600_000, AirReference.ANR))
                .hasMessage("m3=-1.0 is not 0 or more");
        assertThatThrownBy(() -> Cylinder.deadAirM3(1, -1, AirReference.ANR))
                .hasMessage("gaugePa=-1.0 is not 0 or more");
        assertThatThrownBy(() -> cylinder(32, 12, 100).pushAirM3(-1, AirReference.ANR))
                .hasMessage("gaugePa=-1.0 is not 0 or more");
    }

    private static Cylinder cylinder(final double boreMm, final double rodMm, final double travelMm) {
        return new Cylinder(boreMm / 1_000, rodMm / 1_000, travelMm / 1_000);
    }
}
