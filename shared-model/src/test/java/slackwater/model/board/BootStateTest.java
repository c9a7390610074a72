package slackwater.model.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.Level;
import slackwater.model.board.BootState.Verdict;

/** What a load does while nothing of ours runs: handbook 3.9, 3.11 and 3.12. */
class BootStateTest {
    private static final Board BOARD = Boards.named("pi-4").orElseThrow();

    private static List<Integer> pins(final Level energised, final Verdict verdict) {
        return BOARD.header().stream()
                .filter(gpio -> BootState.of(BOARD, gpio, energised).verdict() == verdict)
                .toList();
    }

    @Test
    void anActiveHighLoadRestsOnlyOnPinsThatArePulledDownAndLeftAlone() {
        assertThat(pins(Level.HIGH, Verdict.AT_REST))
                .containsExactly(9, 10, 11, 12, 13, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27);
        assertThat(pins(Level.HIGH, Verdict.ENERGISED)).containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8, 14);
        assertThat(pins(Level.HIGH, Verdict.UNCERTAIN)).containsExactly(15);
    }

    @Test
    void anActiveLowLoadRestsOnlyOnPinsThatArePulledUp() {
        assertThat(pins(Level.LOW, Verdict.AT_REST)).containsExactly(2, 3, 4, 5, 6, 7, 8);
        assertThat(pins(Level.LOW, Verdict.ENERGISED)).isEmpty();
        assertThat(pins(Level.LOW, Verdict.UNCERTAIN))
                .containsExactly(0, 1, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27);
    }

    @Test
    void theReasonIsASentenceForThePersonWhoWiresIt() {
        assertThat(BootState.of(BOARD, 17, Level.HIGH).reason())
                .isEqualTo("GPIO17 is pulled down from reset, and low is rest.");
        assertThat(BootState.of(BOARD, 5, Level.HIGH).reason())
                .isEqualTo("GPIO5 is pulled up from reset until the program runs, and high energises the load.");
        assertThat(BootState.of(BOARD, 17, Level.LOW).reason())
                .isEqualTo(
                        "GPIO17 is pulled down from reset and low energises the load: a sensitive opto board may switch"
                                + " on (handbook 3.12).");
        assertThat(BootState.of(BOARD, 14, Level.HIGH).reason())
                .isEqualTo(
                        "GPIO14: serial output on many images: high and chattering during boot; it is high before the"
                                + " program runs, and high energises the load.");
        assertThat(BootState.of(BOARD, 1, Level.LOW).reason())
                .isEqualTo(
                        "GPIO1: probed for an add-on board's memory at every boot; leave it unconnected; it may go low"
                                + " before the program runs, and low energises the load.");
    }

    @Test
    void aPinThatIsNotOnTheHeaderIsAProgrammersMistake() {
        assertThatThrownBy(() -> BootState.of(BOARD, 28, Level.HIGH))
                .hasMessage("gpio=28 is not on the header of pi-4");
    }
}
