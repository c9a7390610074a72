package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.Pull;
import slackwater.model.board.Board;
import slackwater.model.board.Boards;

/**
 * Handbook 3.9 (BCM2835 ARM Peripherals Table 6-31 by way of the vendor's raspi-gpio) and 3.10 (the header of an
 * open-source GPIO library, compared pin by pin). Case 3.9.9, every pin an input, is no fact of a board here.
 */
class BoardPinsTest {
    private static final Board BOARD = Boards.named("pi-4").orElseThrow();
    private static final Map<String, Supplier<String>> PULLS = new LinkedHashMap<>();

    static {
        PULLS.put("3.9.1", () -> pulls(0, 8));
        PULLS.put("3.9.2", () -> pulls(9, 27));
        PULLS.put("3.9.3", () -> pulls(28, 29));
        PULLS.put("3.9.4", () -> pulls(30, 33));
        PULLS.put("3.9.5", () -> pulls(34, 36));
        PULLS.put("3.9.6", () -> pulls(37, 43));
        PULLS.put("3.9.7", () -> pulls(44, 45));
        PULLS.put("3.9.8", () -> pulls(46, 53));
        PULLS.put("3.9.10", () -> mask(Pull.UP));
        PULLS.put("3.9.11", () -> mask(Pull.DOWN));
    }

    /** The pulls of a run of pins, each named once: one word when all are the same. */
    private static String pulls(final int first, final int last) {
        return IntStream.rangeClosed(first, last)
                .mapToObj(gpio -> BOARD.pullAtReset(gpio).name().toLowerCase(Locale.ROOT))
                .distinct()
                .collect(Collectors.joining(" "));
    }

    private static String mask(final Pull pull) {
        final int bits = IntStream.rangeClosed(0, 27)
                .filter(gpio -> BOARD.pullAtReset(gpio) == pull)
                .map(gpio -> 1 << gpio)
                .sum();
        return String.format(Locale.ROOT, "0x%08X", bits);
    }

    static Stream<CheckValue> pullCases() {
        return CheckText.stated("3.9", PULLS);
    }

    static Stream<CheckValue> headerCases() {
        return CheckValue.section("3.10").stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pullCases")
    void thePullAtResetIsTheHandbooks(final CheckValue value) {
        assertThat(Objects.requireNonNull(PULLS.get(value.id()), value.id()).get())
                .isEqualTo(value.expected());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("headerCases")
    void theHeadersPinIsTheHandbooks(final CheckValue value) {
        final int pin = Integer.parseInt(value.id().substring("3.10.".length()));
        assertThat(value.quantity()).endsWith("physical pin " + pin);
        assertThat(Boards.all())
                .allSatisfy(board -> assertThat(board.signals().get(pin - 1)).isEqualTo(value.expected()));
    }
}
