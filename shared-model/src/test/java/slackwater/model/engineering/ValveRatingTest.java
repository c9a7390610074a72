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

/** Handbook 1.4: C, Kv, Cv and Qn; the gas formulas (IEC 60534, VDI form) are from memory there. */
class ValveRatingTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.4.1", () -> 60_000 * new FlowPath(1e-8, 0.3).nominalM3PerS());
        COMPUTED.put("1.4.2", () -> 60_000 * new FlowPath(1e-8, 0.5).nominalM3PerS());
        COMPUTED.put(
                "1.4.3", () -> 1e8 * FlowPath.fromNominalFlow(0.5 / 60, 0.3).conductanceM3PerSPa());
        COMPUTED.put("1.4.4", () -> 60_000 * ValveRating.nominalOfKvM3PerS(1, AirReference.NORMAL));
        COMPUTED.put("1.4.5", () -> 60_000 * ValveRating.nominalOfKvM3PerS(1, AirReference.ANR));
        COMPUTED.put("1.4.6", () -> ValveRating.kvOfCv(1));
        COMPUTED.put("1.4.7", () -> ValveRating.cvOfKv(1));
        COMPUTED.put("1.4.8", () -> 60_000 * ValveRating.nominalOfKvM3PerS(ValveRating.kvOfCv(1), AirReference.ANR));
        COMPUTED.put("1.4.9", () -> 1e8 * FlowPath.fromKv(1, 0.3).conductanceM3PerSPa());
        COMPUTED.put("1.4.10", () -> 1e8 * FlowPath.fromCv(1, 0.3).conductanceM3PerSPa());
        COMPUTED.put("1.4.11", () -> 1e8 * FlowPath.fromArea(1e-6, 1).conductanceM3PerSPa());
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.4", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    /** The handbook's worked example below the table: 500 l/min is Kv 0.49 by way of C, Cv 0.57 and 9.8 mm2. */
    @Test
    void theWorkedExampleComesOutWhole() {
        final FlowPath valve = FlowPath.fromNominalFlow(0.5 / 60, FlowPath.USUAL_CRITICAL_RATIO);
        assertThat(valve.kvM3PerH()).isEqualTo(0.49, within(0.005));
        assertThat(valve.cvGpmPerRootPsi()).isEqualTo(0.57, within(0.005));
        assertThat(valve.effectiveAreaM2() * 1e6).isEqualTo(9.8, within(0.1));
    }

    @Test
    void eachConversionIsTheInverseOfItsFactory() {
        assertThat(FlowPath.fromNominalFlow(0.01, 0.4).nominalM3PerS()).isEqualTo(0.01, within(1e-12));
        assertThat(FlowPath.fromKv(0.7, 0.4).kvM3PerH()).isEqualTo(0.7, within(1e-12));
        assertThat(FlowPath.fromCv(0.7, 0.4).cvGpmPerRootPsi()).isEqualTo(0.7, within(1e-12));
        assertThat(FlowPath.fromArea(3e-6, 0.5).effectiveAreaM2()).isEqualTo(1.5e-6, within(1e-18));
        assertThat(ValveRating.cvOfKv(ValveRating.kvOfCv(0.3))).isEqualTo(0.3, within(1e-12));
    }

    @Test
    void aHoleIsItsArea() {
        assertThat(FlowPath.ofHole(0.002, 0.65)).isEqualTo(FlowPath.fromArea(new Orifice(0.002, 0.65).areaM2(), 0.65));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> FlowPath.fromNominalFlow(0, 0.3)).hasMessage("nominalM3PerS=0.0 is not above 0");
        assertThatThrownBy(() -> FlowPath.fromKv(-1, 0.3)).hasMessage("kvM3PerH=-1.0 is not above 0");
        assertThatThrownBy(() -> FlowPath.fromCv(Double.NaN, 0.3)).hasMessage("cvGpmPerRootPsi=NaN is not above 0");
        assertThatThrownBy(() -> FlowPath.fromArea(0, 1)).hasMessage("areaM2=0.0 is not above 0");
        assertThatThrownBy(() -> FlowPath.ofHole(0, 1)).hasMessage("diameterM=0.0 is not above 0");
        assertThatThrownBy(() -> FlowPath.fromArea(1, 1.01))
                .hasMessage("dischargeCoefficient=1.01 is not above 0, at most 1");
    }
}
