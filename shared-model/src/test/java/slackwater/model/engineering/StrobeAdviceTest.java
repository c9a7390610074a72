package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 4.2, from the sources that stand beside each value. */
class StrobeAdviceTest {
    private static final Map<String, Supplier<String>> SAID = new LinkedHashMap<>();

    static {
        SAID.put("4.2.1", () -> CheckWords.plain(FlashCount.VENUE_MOST_IN_A_SECOND));
        SAID.put(
                "4.2.2", () -> "synchronised, fixed, below " + CheckWords.plain(StrobeAdvice.THEATRE_BELOW_HZ) + " Hz");
        SAID.put(
                "4.2.3",
                () -> CheckWords.plain(StrobeAdvice.PROVOKES_FROM_HZ) + ".."
                        + CheckWords.plain(StrobeAdvice.PROVOKES_TO_HZ));
        SAID.put(
                "4.2.4",
                () -> CheckWords.plain(GeneralFlash.BROADCAST_STEP_CD_PER_M2)
                        + " cd/m2 or more with darker image below "
                        + CheckWords.plain(GeneralFlash.BROADCAST_DARKER_BELOW_CD_PER_M2) + " cd/m2");
        SAID.put("4.2.5", () -> "about 1 in " + StrobeAdvice.ONE_PERSON_IN);
        SAID.put("4.2.6", () -> CheckWords.plain(StrobeAdvice.LONGEST_ON_END_S));
    }

    private static Stream<CheckValue> cases() {
        return CheckWords.of("4.2", SAID.keySet());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFiguresAreTheHandbooks(final CheckValue value) {
        CheckWords.agrees(value, CheckWords.of(SAID, value));
    }

    @Test
    void bothEndsOfTheProvokingRatesProvoke() {
        assertThat(StrobeAdvice.provokes(2.99)).isFalse();
        assertThat(StrobeAdvice.provokes(3)).isTrue();
        assertThat(StrobeAdvice.provokes(30)).isTrue();
        assertThat(StrobeAdvice.provokes(30.01)).isFalse();
        assertThatThrownBy(() -> StrobeAdvice.provokes(-1)).hasMessage("flashesHz=-1.0 is not 0 or more");
    }
}
