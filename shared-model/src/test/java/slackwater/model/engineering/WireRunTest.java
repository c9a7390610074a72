package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 3.3 (HyperPhysics, NEC chapter 9 table 8; IEC 60228 from memory). */
class WireRunTest {
    private static final double FT_M = 0.3048;
    private static final double HUNDRED_FT_M = 100 * FT_M;
    /** The published 6.385 ohm/1000 ft of the cases; the formula gives 6.3849. */
    private static final double AWG_18_OHM_PER_M = Copper.ohmPerM(Copper.awgAreaM2(18), 20);

    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();
    private static final Map<String, Supplier<String>> TEXTS = new LinkedHashMap<>();

    static {
        COMPUTED.put("3.3.1", () -> ohmPer1000Ft(18));
        COMPUTED.put("3.3.2", () -> ohmPer1000Ft(16));
        COMPUTED.put("3.3.3", () -> ohmPer1000Ft(14));
        COMPUTED.put("3.3.4", () -> ohmPer1000Ft(12));
        COMPUTED.put("3.3.5", () -> ohmPer1000Ft(10));
        COMPUTED.put("3.3.11", () -> Copper.temperatureFactor(75));
        COMPUTED.put("3.3.12", () -> new WireRun(HUNDRED_FT_M, WireTable.Nec.AWG_14.solidOhmPerM()).dropV(12));
        COMPUTED.put("3.3.13", () -> new WireRun(HUNDRED_FT_M, WireTable.Nec.AWG_12.solidOhmPerM()).dropV(12));
        COMPUTED.put("3.3.14", () -> new WireRun(HUNDRED_FT_M, WireTable.Nec.AWG_10.solidOhmPerM()).dropV(12));
        COMPUTED.put("3.3.15", () -> new WireRun(20, AWG_18_OHM_PER_M).dropV(1));
        COMPUTED.put("3.3.16", () -> WireRun.longestM(AWG_18_OHM_PER_M, 0.5, WireRun.ADVISED_BRANCH_DROP * 24));
        TEXTS.put("3.3.6", () -> printed(WireTable.Nec.AWG_18));
        TEXTS.put("3.3.7", () -> printed(WireTable.Nec.AWG_16));
        TEXTS.put("3.3.8", () -> printed(WireTable.Nec.AWG_14));
        TEXTS.put("3.3.9", () -> printed(WireTable.Nec.AWG_12));
        TEXTS.put("3.3.10", () -> printed(WireTable.Nec.AWG_10));
        TEXTS.put("3.3.17", () -> printed(WireTable.Iec.MM2_0_5));
        TEXTS.put("3.3.18", () -> printed(WireTable.Iec.MM2_0_75));
        TEXTS.put("3.3.19", () -> printed(WireTable.Iec.MM2_1));
        TEXTS.put("3.3.20", () -> printed(WireTable.Iec.MM2_1_5));
        TEXTS.put("3.3.21", () -> printed(WireTable.Iec.MM2_2_5));
        TEXTS.put(
                "3.3.22",
                () -> CheckText.number(WireRun.ADVISED_BRANCH_DROP * 100) + " % branch, "
                        + CheckText.number(WireRun.ADVISED_WHOLE_DROP * 100) + " % feeder+branch");
    }

    private static double ohmPer1000Ft(final int gauge) {
        return new WireRun(1_000 * FT_M / 2, Copper.ohmPerM(Copper.awgAreaM2(gauge), 20)).loopOhm();
    }

    private static String printed(final WireTable.Nec wire) {
        return CheckText.number(wire.solidOhmPer1000Ft()) + " / " + CheckText.number(wire.strandedOhmPer1000Ft());
    }

    private static String printed(final WireTable.Iec wire) {
        return CheckText.number(wire.solidOhmPerKm()) + " / " + CheckText.number(wire.flexibleOhmPerKm());
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("3.3", COMPUTED);
    }

    static Stream<CheckValue> texts() {
        return CheckText.stated("3.3", TEXTS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("texts")
    void theTableIsTheHandbooks(final CheckValue value) {
        assertThat(Objects.requireNonNull(TEXTS.get(value.id()), value.id()).get())
                .isEqualTo(value.expected());
    }

    /** The diameters that stand beside cases 1 to 5. */
    @ParameterizedTest(name = "AWG {0}: {1} mm")
    @CsvSource({"18, 1.0237", "16, 1.2908", "14, 1.6277", "12, 2.0525", "10, 2.5882"})
    void theGaugesDiameterIsTheHandbooks(final int gauge, final double diameterMm) {
        assertThat(Copper.awgDiameterM(gauge) * 1e3).isEqualTo(diameterMm, within(0.00006));
    }

    /** Cases 12 to 15 in parts of the supply: 6.14 %, 3.86 %, 2.42 % of 120 V and 6.98 % of 12 V. */
    @Test
    void theDropInPartsOfTheSupplyIsTheHandbooks() {
        assertThat(new WireRun(HUNDRED_FT_M, WireTable.Nec.AWG_14.solidOhmPerM()).dropShare(12, 120))
                .isEqualTo(0.0614, within(0.00005));
        assertThat(new WireRun(20, AWG_18_OHM_PER_M).dropShare(1, 12)).isEqualTo(0.0698, within(0.00005));
    }

    @Test
    void aRunOfTheLongestLengthHasTheAllowedDrop() {
        final double longestM = WireRun.longestM(AWG_18_OHM_PER_M, 0.5, 0.72);
        assertThat(new WireRun(longestM, AWG_18_OHM_PER_M).dropV(0.5)).isEqualTo(0.72, within(1e-12));
    }

    /** 100 ft of AWG 14 there and back, 0.614 ohm, let through 195 A at 120 V. */
    @Test
    void theRunLimitsAShortCircuit() {
        assertThat(new WireRun(HUNDRED_FT_M, WireTable.Nec.AWG_14.solidOhmPerM()).shortCircuitA(120))
                .isEqualTo(195.4, within(0.1));
        assertThatThrownBy(() -> new WireRun(0, 0.01).shortCircuitA(120)).hasMessage("loopOhm=0.0 is not above 0");
    }

    @Test
    void theTablesAgreeWithTheFormula() {
        for (final WireTable.Nec wire : WireTable.Nec.values()) {
            final double formula = Copper.ohmPerM(Copper.awgAreaM2(wire.gauge()), 75);
            assertThat(wire.solidOhmPerM()).as("AWG %d", wire.gauge()).isEqualTo(formula, within(formula * 0.006));
            assertThat(wire.strandedOhmPerM() / wire.solidOhmPerM()).isBetween(1.02, 1.03);
        }
        for (final WireTable.Iec wire : WireTable.Iec.values()) {
            final double formula = Copper.ohmPerM(wire.areaM2(), 20);
            assertThat(wire.solidOhmPerM()).as(wire.name()).isBetween(formula, formula * 1.08);
            assertThat(wire.flexibleOhmPerM()).isGreaterThan(wire.solidOhmPerM());
        }
    }

    @Test
    void aWireIsFoundInItsTableOrNot() {
        assertThat(WireTable.Nec.ofGauge(14)).contains(WireTable.Nec.AWG_14);
        assertThat(WireTable.Nec.ofGauge(13)).isEmpty();
        assertThat(WireTable.Iec.ofArea(0.75e-6)).contains(WireTable.Iec.MM2_0_75);
        assertThat(WireTable.Iec.ofArea(0.76e-6)).isEmpty();
    }

    @Test
    void figuresThatNoWireHasAreNamed() {
        assertThatThrownBy(() -> new WireRun(-1, 0.01)).hasMessage("lengthM=-1.0 is not 0 or more");
        assertThatThrownBy(() -> new WireRun(1, 0)).hasMessage("ohmPerM=0.0 is not above 0");
        assertThatThrownBy(() -> new WireRun(1, 0.01).dropV(-1)).hasMessage("amps=-1.0 is not 0 or more");
        assertThatThrownBy(() -> new WireRun(1, 0.01).dropShare(1, 0)).hasMessage("supplyV=0.0 is not above 0");
        assertThatThrownBy(() -> WireRun.longestM(0.01, 0, 1)).hasMessage("amps=0.0 is not above 0");
        assertThatThrownBy(() -> Copper.awgDiameterM(41)).hasMessage("gauge=41.0 is not within 0.0 to 40.0");
        assertThatThrownBy(() -> Copper.ohmPerM(0, 20)).hasMessage("areaM2=0.0 is not above 0");
        assertThatThrownBy(() -> Copper.temperatureFactor(151))
                .hasMessage("temperatureC=151.0 is not within -50.0 to 150.0");
    }
}
