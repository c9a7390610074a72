package slackwater.model.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FindingsPrinterTest {
    @Test
    void nothingWrongIsOneLine() {
        assertThat(FindingsPrinter.text(List.of(), 2)).isEqualTo("2 files read, 0 errors, 0 warnings.\n");
    }

    @Test
    void aWarningAloneStopsNothing() {
        final Finding finding = new Finding(Severity.WARNING, "no-show", Optional.empty(), "", "m", "w", "f");
        assertThat(FindingsPrinter.text(List.of(finding), 1))
                .isEqualTo("warning no-show: m\n  why: w\n  fix: f\n\n1 file read, 0 errors, 1 warning.\n");
    }

    @Test
    void theCaretStandsUnderItsPlaceAfterATab() {
        assertThat(FindingsPrinter.text(at("\tpin = 17", 8, 2)))
                .isEqualTo(
                        "rig.toml:4:8: error pin-taken: m\n    4 |  pin = 17\n      |        ^^\n  why: w\n  fix: f\n");
    }

    @Test
    void aLineOfTheWidestIsWholeAndAWiderOneIsCutAroundTheCaret() {
        final String widest = "a".repeat(99) + "b";
        assertThat(FindingsPrinter.text(at(widest, 100, 1)))
                .contains("| " + widest + "\n      | " + " ".repeat(99) + "^\n");
        final String wider = "a".repeat(100) + "b" + "c".repeat(200);
        assertThat(FindingsPrinter.text(at(wider, 101, 1)))
                .contains("| ..." + "a".repeat(40) + "b" + "c".repeat(59) + "...\n      | " + " ".repeat(43) + "^\n");
    }

    @Test
    void aPlaceBeyondTheLineStillHasACaret() {
        assertThat(FindingsPrinter.text(at("abc", 40, 5))).contains("    4 | abc\n      |    ^\n");
    }

    @Test
    void nothingInAFileCanSteerTheTerminal() {
        assertThat(FindingsPrinter.text(at("a\u001B[2J\u202E\u0000", 1, 1))).contains("    4 | a?[2J??\n");
    }

    @Test
    void theNearestWordIsFoundAndAFarOneIsNot() {
        final List<String> known = List.of("longest-on", "shortest-off");
        assertThat(Nearest.of("longest-no", known)).contains("longest-on");
        assertThat(Nearest.of("LONGEST-ON", known)).contains("longest-on");
        assertThat(Nearest.of("bore", known)).isEmpty();
        assertThat(Nearest.of("x", List.of("a"))).isEmpty();
    }

    private static Finding at(final String line, final int column, final int length) {
        final Position at = new Position("rig.toml", 4, column, length);
        return new Finding(Severity.ERROR, "pin-taken", Optional.of(at), line, "m", "w", "f");
    }
}
