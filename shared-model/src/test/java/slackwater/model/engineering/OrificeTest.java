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

/** Handbook 1.5: the isentropic law. */
class OrificeTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.5.1", () -> Orifice.CRITICAL_RATIO);
        COMPUTED.put("1.5.2", () -> Orifice.CHOKED_ROOT_K_S_PER_M);
        COMPUTED.put("1.5.3", () -> 1_000 * new Orifice(0.002, 1).massFlowKgPerS(7e5, 1.013e5, 293.15));
        COMPUTED.put("1.5.4", () -> 1_000 * new Orifice(0.002, 1).massFlowKgPerS(2e5, 1.5e5, 293.15));
        COMPUTED.put("1.5.5", () -> 1_000 * new Orifice(0.001, 0.65).massFlowKgPerS(8e5, 1.013e5, 293.15));
        COMPUTED.put(
                "1.5.6",
                () -> 60_000 * FreeAir.anrM3PerS(new Orifice(0.001, 0.65).massFlowKgPerS(8e5, 1.013e5, 293.15)));
        COMPUTED.put("1.5.7", () -> largestDifference(0.528));
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.5", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    /**
     * Case 7 has a tolerance wider than its value. To its own digits the value goes with b = 0.5283, not with the 0.528
     * that the case names, which gives 0.00169.
     */
    @Test
    void caseSevenToItsOwnDigitsGoesWithFourDigitsOfTheCriticalRatio() {
        assertThat(largestDifference(0.5283)).isEqualTo(0.0015049, within(1e-7));
        assertThat(largestDifference(0.528)).isEqualTo(0.0016891, within(1e-6));
    }

    @Test
    void turnedRoundItIsTheSameFlowWithTheOtherSign() {
        final Orifice hole = new Orifice(0.002, 0.65);
        assertThat(hole.massFlowKgPerS(1e5, 7e5, 293.15)).isNegative();
        assertThat(hole.massFlowKgPerS(2e5, 1.5e5, 293.15)).isEqualTo(-hole.massFlowKgPerS(1.5e5, 2e5, 293.15));
    }

    @Test
    void theFlowIsContinuousAtTheCriticalRatioAndEndsAtNone() {
        final Orifice hole = new Orifice(0.002, 1);
        final double choked = hole.massFlowKgPerS(7e5, 0, 293.15);
        assertThat(hole.massFlowKgPerS(7e5, 7e5 * (Orifice.CRITICAL_RATIO + 1e-9), 293.15))
                .isEqualTo(choked, within(choked * 1e-9));
        assertThat(hole.massFlowKgPerS(7e5, 7e5, 293.15)).isZero();
        assertThat(hole.massFlowKgPerS(0, 0, 293.15)).isZero();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Orifice(0, 1)).hasMessage("diameterM=0.0 is not above 0");
        assertThatThrownBy(() -> new Orifice(0.001, 0))
                .hasMessage("dischargeCoefficient=0.0 is not above 0, at most 1");
        assertThatThrownBy(() -> new Orifice(0.001, Double.NaN)).hasMessageStartingWith("dischargeCoefficient=NaN");
        assertThatThrownBy(() -> new Orifice(0.001, 1).massFlowKgPerS(-1, 0, 293))
                .hasMessage("p1PaAbs=-1.0 is not 0 or more");
        assertThatThrownBy(() -> new Orifice(0.001, 1).massFlowKgPerS(1, 0, -1))
                .hasMessage("upstreamK=-1.0 is not above 0");
    }

    /** The ellipse against the isentropic law, both over their choked flow, at the handbook's ratios. */
    private static double largestDifference(final double b) {
        final FlowPath ellipse = new FlowPath(1e-8, b);
        final Orifice hole = new Orifice(0.002, 1);
        double largest = 0;
        for (int thousandth = 529; thousandth <= 999; thousandth++) {
            final double outPa = 7e5 * thousandth / 1_000;
            final double share = ellipse.massFlowKgPerS(7e5, outPa, 293.15) / ellipse.massFlowKgPerS(7e5, 0, 293.15);
            final double exact = hole.massFlowKgPerS(7e5, outPa, 293.15) / hole.massFlowKgPerS(7e5, 0, 293.15);
            largest = Math.max(largest, Math.abs(share - exact));
        }
        return largest;
    }
}
