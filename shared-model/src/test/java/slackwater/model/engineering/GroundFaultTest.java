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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 3.2 (UL 943, class A). */
class GroundFaultTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("3.2.1", () -> longestTripS(0.006));
        COMPUTED.put("3.2.2", () -> longestTripS(0.020));
        COMPUTED.put("3.2.3", () -> longestTripS(0.030));
        COMPUTED.put("3.2.4", () -> longestTripS(0.100));
        COMPUTED.put("3.2.5", () -> longestTripS(0.264));
    }

    private static double longestTripS(final double leakA) {
        return GroundFault.longestTripS(leakA).orElseThrow();
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("3.2", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @ParameterizedTest(name = "3.2.6 at {0} A: {1}")
    @CsvSource({"0, HOLDS", "0.00399, HOLDS", "0.004, MAY_TRIP", "0.00599, MAY_TRIP", "0.006, TRIPS", "1, TRIPS"})
    void itTripsFromSixMilliamperesAndHoldsBelowFour(final double leakA, final GroundFault.Answer expected) {
        assertThat(GroundFault.of(leakA)).isEqualTo(expected);
    }

    @Test
    void aLeakThatNeedNotTripHasNoTime() {
        assertThat(GroundFault.longestTripS(0.00599)).isEmpty();
    }

    @Test
    void aboveTheFormulasEndTheTimeStays() {
        assertThat(longestTripS(10)).isEqualTo(longestTripS(0.264));
        assertThat(longestTripS(0.263)).isGreaterThan(longestTripS(0.264));
    }

    /** Common practice: a dozen supplies with capacitors to ground sit near the threshold. */
    @Test
    void aDozenSuppliesMayTripIt() {
        assertThat(GroundFault.of(12 * GroundFault.SUPPLY_LEAK_A.most())).isEqualTo(GroundFault.Answer.TRIPS);
        assertThat(GroundFault.of(12 * GroundFault.SUPPLY_LEAK_A.least())).isEqualTo(GroundFault.Answer.HOLDS);
    }

    @Test
    void aLeakThatIsNoCurrentIsNamed() {
        assertThatThrownBy(() -> GroundFault.of(-0.001)).hasMessage("leakA=-0.001 is not 0 or more");
        assertThatThrownBy(() -> GroundFault.longestTripS(Double.NaN)).hasMessage("leakA=NaN is not 0 or more");
    }
}
