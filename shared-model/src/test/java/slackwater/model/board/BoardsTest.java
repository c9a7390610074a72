package slackwater.model.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.Pull;

class BoardsTest {

    private static Board board(final String word) {
        return Boards.named(word).orElseThrow();
    }

    @Test
    void theRigFileMayNameFourBoards() {
        assertThat(Boards.words()).containsExactly("pi-3", "pi-4", "pi-5", "pi-zero-2-w");
        assertThat(Boards.all()).extracting(Board::word).isEqualTo(Boards.words());
        assertThat(Boards.named("pi-6")).isEmpty();
        assertThat(Boards.named("PI-4")).isEmpty();
    }

    /** Handbook 3.9 cases 1 to 8 (BCM2835 ARM Peripherals Table 6-31, tabulated by the vendor's raspi-gpio). */
    @ParameterizedTest
    @CsvSource({
        "0, 8, UP",
        "9, 27, DOWN",
        "28, 29, NONE",
        "30, 33, DOWN",
        "34, 36, UP",
        "37, 43, DOWN",
        "44, 45, NONE",
        "46, 53, UP"
    })
    void pullsAtResetAreTheDataSheets(final int first, final int last, final Pull pull) {
        for (int gpio = first; gpio <= last; gpio++) {
            assertThat(board("pi-4").pullAtReset(gpio)).as("GPIO%d", gpio).isEqualTo(pull);
        }
    }

    /** Handbook 3.9 cases 10 and 11: 0x000001FF and 0x0FFFFE00; pi-5 from memory. Case 9: an input, hence a pull at all. */
    @ParameterizedTest
    @ValueSource(strings = {"pi-3", "pi-4", "pi-5", "pi-zero-2-w"})
    void theMasksOfPulledPinsAreTheHandbooks(final String word) {
        assertThat(mask(board(word), Pull.UP)).isEqualTo(0x000001FF);
        assertThat(mask(board(word), Pull.DOWN)).isEqualTo(0x0FFFFE00);
    }

    private static int mask(final Board board, final Pull pull) {
        return board.header().stream()
                .filter(gpio -> board.pullAtReset(gpio) == pull)
                .mapToInt(gpio -> 1 << gpio)
                .sum();
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 54})
    void aPullOutsideTheTableIsAProgrammersMistake(final int gpio) {
        assertThatThrownBy(() -> board("pi-4").pullAtReset(gpio)).hasMessage("gpio=" + gpio + " is not in 0..53");
    }

    /** Handbook 3.10, ids 3.10.1 to 3.10.40: two pins a row, as its table prints them. */
    @ParameterizedTest
    @ValueSource(strings = {"pi-3", "pi-4", "pi-5", "pi-zero-2-w"})
    void theHeaderIsTheHandbooksPinByPin(final String word) {
        final List<String> rows = new ArrayList<>();
        final List<String> signals = board(word).signals();
        for (int index = 0; index < signals.size(); index += 2) {
            rows.add((index + 1) + " " + signals.get(index) + " | " + signals.get(index + 1) + " " + (index + 2));
        }
        assertThat(rows)
                .containsExactly(
                        "1 3V3 | 5V 2",
                        "3 GPIO2 | 5V 4",
                        "5 GPIO3 | GND 6",
                        "7 GPIO4 | GPIO14 8",
                        "9 GND | GPIO15 10",
                        "11 GPIO17 | GPIO18 12",
                        "13 GPIO27 | GND 14",
                        "15 GPIO22 | GPIO23 16",
                        "17 3V3 | GPIO24 18",
                        "19 GPIO10 | GND 20",
                        "21 GPIO9 | GPIO25 22",
                        "23 GPIO11 | GPIO8 24",
                        "25 GND | GPIO7 26",
                        "27 GPIO0 | GPIO1 28",
                        "29 GPIO5 | GND 30",
                        "31 GPIO6 | GPIO12 32",
                        "33 GPIO13 | GND 34",
                        "35 GPIO19 | GPIO16 36",
                        "37 GPIO26 | GPIO20 38",
                        "39 GND | GPIO21 40");
    }

    @Test
    void everyGpioOfTheHeaderKnowsItsPinAndNoOtherHasOne() {
        final Board board = board("pi-4");
        assertThat(board.header())
                .isEqualTo(IntStream.rangeClosed(0, 27).boxed().toList());
        for (final int gpio : board.header()) {
            final int pin = board.headerPin(gpio).orElseThrow();
            assertThat(board.signals().get(pin - 1)).isEqualTo("GPIO" + gpio);
        }
        assertThat(board.headerPin(28)).isEmpty();
        assertThat(board.headerPin(-1)).isEmpty();
    }

    /** Handbook 3.11. */
    @Test
    void pinsWithALifeOfTheirOwnAreSplitIntoAlwaysAndIfEnabled() {
        final Board board = board("pi-4");
        assertThat(board.header().stream().filter(board::isBusyAtBoot)).containsExactly(0, 1, 2, 3, 14, 15);
        assertThat(board.header().stream().filter(board::isBusyIfEnabled))
                .containsExactly(4, 7, 8, 9, 10, 11, 16, 17, 18, 19, 20, 21);
        assertThat(board.lifeAtBoot(2)).contains("1.8 kOhm");
        assertThat(board.lifeAtBoot(3)).contains("1.8 kOhm").contains("wakes");
        assertThat(board.lifeIfEnabled(4)).contains("one-wire");
        assertThat(board.lifeIfEnabled(11)).contains("SPI");
    }

    @Test
    void onlyTheBoardWhosePullsAreFromMemorySaysSo() {
        assertThat(board("pi-5").caveat()).contains("from memory");
        assertThat(Boards.all()).filteredOn(board -> !board.caveat().isEmpty()).hasSize(1);
    }
}
