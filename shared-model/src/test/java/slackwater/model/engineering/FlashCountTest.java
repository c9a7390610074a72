package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 4.3 cases 1 to 9 (counting rule of WCAG 2.x success criterion 2.3.1), onsets in milliseconds. */
class FlashCountTest {

    private static Stream<Arguments> cases() {
        return Stream.of(
                Arguments.of("2: 4 Hz for 1 s", List.of(0L, 250L, 500L, 750L), 4),
                Arguments.of("3: two close, then one", List.of(0L, 200L, 400L, 1100L), 3),
                Arguments.of("4: four within 0.95 s", List.of(0L, 300L, 600L, 950L), 4),
                Arguments.of("5: the fourth after 1.05 s", List.of(0L, 350L, 700L, 1050L), 3),
                Arguments.of(
                        "6: two strobes at 2 Hz, 0.25 s apart",
                        List.of(0L, 500L, 1000L, 1500L, 250L, 750L, 1250L, 1750L),
                        4),
                Arguments.of(
                        "7: two strobes at 2 Hz in phase", List.of(0L, 500L, 1000L, 1500L, 0L, 500L, 1000L, 1500L), 2),
                Arguments.of("8: three, 1.0 s pause, three", List.of(0L, 100L, 200L, 1200L, 1300L, 1400L), 3),
                Arguments.of("9: three, 0.75 s pause, three", List.of(0L, 100L, 200L, 950L, 1050L, 1150L), 4));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void mostFlashesInASecondAreTheHandbooks(final String name, final List<Long> onsetsMs, final int expected) {
        assertThat(FlashCount.most(onsetsMs.stream().map(ms -> ms * 1_000_000L).toList()))
                .as(name)
                .isEqualTo(expected);
    }

    /** Case 1: 3 Hz for 2 s, onsets at k/3 s, rounded as a clock of nanoseconds would. */
    @Test
    void threeASecondForTwoSecondsAreThree() {
        assertThat(FlashCount.most(LongStream.range(0, 6)
                        .map(k -> k * 1_000_000_000L / 3)
                        .boxed()
                        .toList()))
                .isEqualTo(3);
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
