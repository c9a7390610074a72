package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static slackwater.model.engineering.CheckWords.plain;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 5.6; cases 1 and 4 from memory, 2 and 3 common practice without a source. */
class DebounceTest {
    private static final long MS = 1_000_000L;
    private static final double NS_PER_MS = 1e6;
    private static final double MS_PER_S = 1e3;
    private static final Debounce FOUR_EVERY_5_MS = new Debounce(5 * MS, 4);
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();
    private static final Map<String, Supplier<String>> SAID = new LinkedHashMap<>();

    static {
        COMPUTED.put("5.6.4", () -> FOUR_EVERY_5_MS.acceptedAtNs(6_200_000) / NS_PER_MS);
        SAID.put("5.6.1", () -> "about " + ms(Debounce.SWITCH_MEAN_S) + " / " + ms(Debounce.SWITCH_LONGEST_S));
        SAID.put("5.6.2", () -> ms(Debounce.BUTTON_LEAST_S) + ".." + ms(Debounce.BUTTON_MOST_S));
        SAID.put("5.6.3", () -> ms(Debounce.RELAY_LEAST_S) + ".." + ms(Debounce.RELAY_MOST_S));
    }

    private static String ms(final double seconds) {
        return plain(seconds * MS_PER_S);
    }

    private static Stream<CheckValue> cases() {
        return CheckValue.computed("5.6", COMPUTED);
    }

    private static Stream<CheckValue> ranges() {
        return CheckWords.of("5.6", SAID.keySet());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(CheckWords.of(COMPUTED, value).getAsDouble());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ranges")
    void theFiguresAreTheHandbooks(final CheckValue value) {
        CheckWords.agrees(value, CheckWords.of(SAID, value));
    }

    @Test
    void aSampleAtTheVeryEndOfTheBounceIsSteadyAndOneBeforeItIsNot() {
        assertThat(FOUR_EVERY_5_MS.acceptedAtNs(10 * MS)).isEqualTo(25 * MS);
        assertThat(FOUR_EVERY_5_MS.acceptedAtNs(10 * MS + 1)).isEqualTo(30 * MS);
        assertThat(FOUR_EVERY_5_MS.acceptedAtNs(0)).isEqualTo(15 * MS);
    }

    @Test
    void theDelayNeverReachesItsBound() {
        assertThat(FOUR_EVERY_5_MS.addsBelowNs()).isEqualTo(20 * MS);
        assertThat(FOUR_EVERY_5_MS.acceptedAtNs(10 * MS + 1) - (10 * MS + 1)).isEqualTo(20 * MS - 1);
    }

    @Test
    void oneSampleIsAcceptedWhereItIsTaken() {
        assertThat(new Debounce(5 * MS, 1).acceptedAtNs(6 * MS)).isEqualTo(10 * MS);
    }

    @Test
    void figuresOutsideTheirRangeAreNamed() {
        assertThatThrownBy(() -> new Debounce(0, 4)).hasMessage("sampleNs=0 and equalSamples=4 must both be above 0");
        assertThatThrownBy(() -> new Debounce(1, 0)).hasMessage("sampleNs=1 and equalSamples=0 must both be above 0");
        assertThatThrownBy(() -> FOUR_EVERY_5_MS.acceptedAtNs(-1))
                .hasMessage("bounceEndsNs=-1 is before the first sample");
    }
}
