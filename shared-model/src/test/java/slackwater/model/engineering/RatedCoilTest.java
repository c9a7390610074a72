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

/** Handbook 3.6: arithmetic. */
class RatedCoilTest {
    private static final RatedCoil VALVE = new RatedCoil(24, 3);
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("3.6.1", () -> VALVE.currentA() * 1e3);
        COMPUTED.put("3.6.2", VALVE::resistanceOhm);
        COMPUTED.put("3.6.3", () -> new RatedCoil(12, 4.8).currentA() * 1e3);
        COMPUTED.put("3.6.4", () -> VALVE.supplyA(8, 0.2));
        COMPUTED.put("3.6.5", () -> VALVE.currentA(80) * 1e3);
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("3.6", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @Test
    void aColdCoilDrawsWhatIsPrintedAndAFreezingOneMore() {
        assertThat(VALVE.currentA(20)).isEqualTo(VALVE.currentA(), within(1e-15));
        assertThat(VALVE.currentA(-10)).isGreaterThan(VALVE.currentA());
        assertThat(VALVE.supplyA(0, 0.2)).isZero();
    }

    @Test
    void figuresThatNoCoilHasAreNamed() {
        assertThatThrownBy(() -> new RatedCoil(0, 3)).hasMessage("supplyV=0.0 is not above 0");
        assertThatThrownBy(() -> new RatedCoil(24, 0)).hasMessage("powerW=0.0 is not above 0");
        assertThatThrownBy(() -> VALVE.supplyA(-1, 0)).hasMessage("coils=-1.0 is not 0 or more");
        assertThatThrownBy(() -> VALVE.supplyA(1, -0.1)).hasMessage("margin=-0.1 is not 0 or more");
    }
}
