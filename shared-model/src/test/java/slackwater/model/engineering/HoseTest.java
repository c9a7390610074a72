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

/** Handbook 1.7: three laws that agree no better than to a factor of 1.6. */
class HoseTest {
    private static final Hose HOSE = new Hose(10, 0.006);
    private static final double FLOW_M3_PER_S = 0.2 / 60;
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.7.1", () -> HOSE.empiricalDropPa(FLOW_M3_PER_S, 7e5) / 1e5);
        COMPUTED.put("1.7.2", () -> HOSE.handbookDropPa(FLOW_M3_PER_S, 7e5) / 1e5);
        COMPUTED.put("1.7.3", () -> HOSE.reynolds(FLOW_M3_PER_S));
        COMPUTED.put("1.7.4", () -> HOSE.frictionFactor(HOSE.reynolds(FLOW_M3_PER_S)));
        COMPUTED.put("1.7.5", () -> HOSE.darcyDropPa(FLOW_M3_PER_S, 7e5, 293.15).orElseThrow() / 1e5);
        COMPUTED.put("1.7.6", () -> new Hose(10, 0.003).empiricalDropPa(1e-4, 7e5) / HOSE.empiricalDropPa(1e-4, 7e5));
        COMPUTED.put(
                "1.7.7", () -> HOSE.empiricalDropPa(2 * FLOW_M3_PER_S, 7e5) / HOSE.empiricalDropPa(FLOW_M3_PER_S, 7e5));
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.7", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    /** Handbook 1.7, in words: the empirical forms lie 50 to 70 % above the smooth hose's. */
    @Test
    void theEmpiricalLawsAreTheCautiousOnes() {
        final double darcyPa = HOSE.darcyDropPa(FLOW_M3_PER_S, 7e5, 293.15).orElseThrow();
        assertThat(HOSE.empiricalDropPa(FLOW_M3_PER_S, 7e5) / darcyPa).isBetween(1.5, 1.75);
        assertThat(HOSE.handbookDropPa(FLOW_M3_PER_S, 7e5) / darcyPa).isBetween(1.5, 1.75);
    }

    @Test
    void withoutFlowNothingIsLost() {
        assertThat(HOSE.darcyDropPa(0, 7e5, 293.15)).hasValue(0);
        assertThat(HOSE.empiricalDropPa(0, 7e5)).isZero();
        assertThat(HOSE.handbookDropPa(0, 7e5)).isZero();
    }

    @Test
    void whatAHoseCannotPassHasNoDrop() {
        assertThat(HOSE.darcyDropPa(0.009, 7e5, 293.15)).isPresent();
        assertThat(HOSE.darcyDropPa(0.011, 7e5, 293.15)).isEmpty();
    }

    @Test
    void slowAirIsLaminar() {
        assertThat(HOSE.frictionFactor(2_300)).isEqualTo(64.0 / 2_300, within(1e-12));
        assertThat(HOSE.frictionFactor(2_301)).isGreaterThan(64.0 / 2_300);
    }

    /** From memory on one side, so this only says that both laws speak of the same hose. */
    @Test
    void asAFlowPathItLosesMuchTheSame() {
        final double outPa = 7e5 - HOSE.darcyDropPa(FLOW_M3_PER_S, 7e5, 293.15).orElseThrow();
        assertThat(HOSE.asFlowPath().freeFlowM3PerS(7e5, outPa, 293.15))
                .isEqualTo(FLOW_M3_PER_S, within(FLOW_M3_PER_S * 0.1));
        assertThat(new Hose(20, 0.006).asFlowPath().conductanceM3PerSPa())
                .isLessThan(HOSE.asFlowPath().conductanceM3PerSPa());
    }

    /** 10 m of 6 mm: 0.28 l. */
    @Test
    void aHoseHoldsAir() {
        assertThat(HOSE.volumeM3()).isEqualTo(2.827e-4, within(1e-7));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Hose(0, 0.006)).hasMessage("lengthM=0.0 is not above 0");
        assertThatThrownBy(() -> new Hose(1, Double.NaN)).hasMessage("diameterM=NaN is not above 0");
        assertThatThrownBy(() -> HOSE.empiricalDropPa(-1, 7e5)).hasMessage("freeAirM3PerS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> HOSE.handbookDropPa(1, 0)).hasMessage("inletPaAbs=0.0 is not above 0");
        assertThatThrownBy(() -> HOSE.darcyDropPa(-1, 7e5, 293)).hasMessage("anrM3PerS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> HOSE.frictionFactor(0)).hasMessage("reynolds=0.0 is not above 0");
    }
}
