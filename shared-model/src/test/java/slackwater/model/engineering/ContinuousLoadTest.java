package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 3.1 (NEC 210.19(A)(1) and 210.20(A)). */
class ContinuousLoadTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("3.1.1", () -> ContinuousLoad.largestA(15));
        COMPUTED.put("3.1.2", () -> ContinuousLoad.largestA(20));
        COMPUTED.put("3.1.3", () -> ContinuousLoad.largestW(15, 120));
        COMPUTED.put("3.1.4", () -> ContinuousLoad.largestW(20, 120));
        COMPUTED.put("3.1.5", () -> ContinuousLoad.breakerA(9, 4));
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("3.1", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    /** From memory: NEC article 100, expected for three hours or more. */
    @Test
    void case_3_1_6_continuousBeginsAtThreeHours() {
        assertThat(ContinuousLoad.isContinuous(3 * 3_600 - 1)).isFalse();
        assertThat(ContinuousLoad.isContinuous(3 * 3_600)).isTrue();
    }

    /** Case 5 goes on: 15.25 A takes the next standard breaker, 20 A (sizes of NEC 240.6 from memory). */
    @Test
    void theNextStandardBreakerIsTaken() {
        assertThat(ContinuousLoad.standardBreakerA(15.25)).hasValue(20);
        assertThat(ContinuousLoad.standardBreakerA(15)).hasValue(15);
        assertThat(ContinuousLoad.standardBreakerA(15.01)).hasValue(20);
        assertThat(ContinuousLoad.standardBreakerA(0)).hasValue(15);
        assertThat(ContinuousLoad.standardBreakerA(100)).hasValue(100);
        assertThat(ContinuousLoad.standardBreakerA(100.1)).isEmpty();
    }

    @Test
    void figuresThatNoCircuitHasAreNamed() {
        assertThatThrownBy(() -> ContinuousLoad.largestA(0)).hasMessage("breakerA=0.0 is not above 0");
        assertThatThrownBy(() -> ContinuousLoad.largestW(15, -1)).hasMessage("supplyV=-1.0 is not above 0");
        assertThatThrownBy(() -> ContinuousLoad.breakerA(-1, 0)).hasMessage("continuousA=-1.0 is not 0 or more");
        assertThatThrownBy(() -> ContinuousLoad.breakerA(1, Double.NaN)).hasMessage("otherA=NaN is not 0 or more");
        assertThatThrownBy(() -> ContinuousLoad.amps(100, 0)).hasMessage("supplyV=0.0 is not above 0");
        assertThatThrownBy(() -> ContinuousLoad.isContinuous(-1)).hasMessage("lastsS=-1.0 is not 0 or more");
    }
}
