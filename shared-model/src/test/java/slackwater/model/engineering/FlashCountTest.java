package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 4.3 (counting rule of WCAG 2.x success criterion 2.3.1), onsets in milliseconds. */
class FlashCountTest {
    private static final long NS_PER_MS = 1_000_000L;
    private static final Map<String, List<Long>> ONSETS_NS = new LinkedHashMap<>();

    static {
        // 3 Hz for 2 s, onsets at k/3 s, rounded as a clock of nanoseconds would
        ONSETS_NS.put(
                "4.3.1",
                LongStream.range(0, 6).map(k -> k * 1_000_000_000L / 3).boxed().toList());
        ONSETS_NS.put("4.3.2", atMs(0, 250, 500, 750));
        ONSETS_NS.put("4.3.3", atMs(0, 200, 400, 1100));
        ONSETS_NS.put("4.3.4", atMs(0, 300, 600, 950));
        ONSETS_NS.put("4.3.5", atMs(0, 350, 700, 1050));
        ONSETS_NS.put("4.3.6", atMs(0, 500, 1000, 1500, 250, 750, 1250, 1750));
        ONSETS_NS.put("4.3.7", atMs(0, 500, 1000, 1500, 0, 500, 1000, 1500));
        ONSETS_NS.put("4.3.8", atMs(0, 100, 200, 1200, 1300, 1400));
        ONSETS_NS.put("4.3.9", atMs(0, 100, 200, 950, 1050, 1150));
    }

    private static List<Long> atMs(final long... onsetsMs) {
        return LongStream.of(onsetsMs).map(ms -> ms * NS_PER_MS).boxed().toList();
    }

    private static Stream<CheckValue> cases() {
        return CheckWords.of("4.3", ONSETS_NS.keySet());
    }

    /** The handbook's text has the count and whether it passes both limits. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void mostFlashesInASecondAreTheHandbooks(final CheckValue value) {
        final int most = FlashCount.most(CheckWords.of(ONSETS_NS, value));

        CheckWords.agrees(
                value,
                () -> most + " (" + verdict(most, FlashCount.MOST_IN_A_SECOND) + "; "
                        + verdict(most, FlashCount.VENUE_MOST_IN_A_SECOND) + ")");
    }

    private static String verdict(final int flashes, final int limit) {
        return (flashes <= limit ? "pass" : "FAIL") + " at " + limit;
    }

    @Test
    void theSecondIsOpenAtItsEnd() {
        assertThat(FlashCount.most(List.of(0L, 1_000_000_000L))).isEqualTo(1);
        assertThat(FlashCount.most(List.of(0L, 999_999_999L))).isEqualTo(2);
    }

    @Test
    void onsetsCloserThanTwentyMillisecondsAreOneFlash() {
        assertThat(FlashCount.most(List.of(0L, 19_999_999L))).isEqualTo(1);
        assertThat(FlashCount.most(List.of(0L, 20_000_000L))).isEqualTo(2);
    }

    @Test
    void nothingFlashesNotAtAll() {
        assertThat(FlashCount.most(List.of())).isZero();
    }
}
