package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 2.4 (common practice, no source). */
class UsualFogMakerTest {
    private static final double MIN_S = 60;
    private static final double G_PER_MIN = 1e-3 / 60;
    private static final Map<String, Supplier<String>> TEXTS = new LinkedHashMap<>();

    static {
        TEXTS.put("2.4.1", () -> CheckText.range(UsualFogMaker.WATTS_400.warmUpS(), MIN_S) + " min");
        TEXTS.put("2.4.2", () -> CheckText.range(UsualFogMaker.WATTS_700_TO_1000.warmUpS(), MIN_S) + " min");
        TEXTS.put("2.4.3", () -> CheckText.range(UsualFogMaker.WATTS_1200_TO_1500.warmUpS(), MIN_S) + " min");
        TEXTS.put("2.4.4", () -> CheckText.range(UsualFogMaker.BLOCK_C) + " C");
        TEXTS.put("2.4.5", () -> CheckText.range(UsualFogMaker.LONGEST_BURST_S) + " s");
        TEXTS.put("2.4.6", () -> CheckText.range(UsualFogMaker.RECOVERY_S) + " s");
        TEXTS.put("2.4.7", () -> CheckText.range(UsualFogMaker.FLUID_400_W_KG_PER_S, G_PER_MIN) + " g/min");
        TEXTS.put("2.4.8", () -> CheckText.range(UsualFogMaker.FLUID_1000_W_KG_PER_S, G_PER_MIN) + " g/min");
        TEXTS.put("2.4.9", () -> "%.1f A (computed)".formatted(ContinuousLoad.amps(1_000, 120)));
    }

    static Stream<CheckValue> cases() {
        return CheckText.stated("2.4", TEXTS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theRangeIsTheHandbooks(final CheckValue value) {
        assertThat(Objects.requireNonNull(TEXTS.get(value.id()), value.id()).get())
                .isEqualTo(value.expected());
    }

    @ParameterizedTest
    @CsvSource({"250, 400", "400, 400", "401, 1000", "1000, 1000", "1001, 1500", "3000, 1500"})
    void aHeaterIsOfTheFirstClassThatReachesItsPower(final double heaterW, final double classEndsAtW) {
        assertThat(UsualFogMaker.of(heaterW).powerW().most()).isEqualTo(classEndsAtW);
    }

    @Test
    void aClassKnowsItsHeatersAndAFogMakerWithoutAHeaterIsNone() {
        assertThat(UsualFogMaker.WATTS_700_TO_1000.powerW()).isEqualTo(new UsualRange(700, 1_000));
        assertThatThrownBy(() -> UsualFogMaker.of(0)).hasMessage("heaterW=0.0 is not above 0");
    }

    @Test
    void aRangeContainsItsEnds() {
        final UsualRange range = new UsualRange(20, 60);
        assertThat(range.holds(19.99)).isFalse();
        assertThat(range.holds(20)).isTrue();
        assertThat(range.holds(60)).isTrue();
        assertThat(range.holds(60.01)).isFalse();
        assertThat(range.middle()).isEqualTo(40);
        assertThat(new UsualRange(3, 3).holds(3)).isTrue();
        assertThatThrownBy(() -> new UsualRange(3, 2.9)).hasMessageStartingWith("most=2.9 is not at least 3.0");
    }
}
