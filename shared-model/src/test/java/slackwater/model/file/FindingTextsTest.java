package slackwater.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each mistake gives exactly the text in findings.txt; the right line beside it gives none. */
class FindingTextsTest {
    private static final int LEAST_CASES = 25;

    /** One section of findings.txt. */
    record Mistake(String title, String base, String file, String line, String wrong, String beside, String text) {
        static Mistake of(final String section) {
            final String[] parts = section.split("\n", 6);
            final String[] in = parts[1].substring("in: ".length()).split(" ");
            return new Mistake(
                    parts[0],
                    in[0],
                    in[1],
                    unfold(parts[2], "line: "),
                    unfold(parts[3], "wrong: "),
                    unfold(parts[4], "beside: "),
                    parts[5].stripTrailing());
        }

        private static String unfold(final String line, final String label) {
            return line.substring(label.length()).replace("\\n", "\n");
        }

        @Override
        public String toString() {
            return title;
        }
    }

    @TempDir
    private Path folder;

    static Stream<Mistake> mistakes() {
        return Arrays.stream(Folders.resource("findings.txt").split("(?m)^== "))
                .filter(section -> !section.isEmpty())
                .map(Mistake::of);
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeGivesItsWholeText(final Mistake mistake) {
        assertThat(printed(mistake, mistake.wrong())).isEqualTo(mistake.text());
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void theRightLineBesideAMistakeGivesNothing(final Mistake mistake) {
        assertThat(printed(mistake, mistake.beside())).isEqualTo("2 files read, 0 errors, 0 warnings.");
    }

    @Test
    void thereAreEnoughMistakes() {
        assertThat(mistakes().count()).isGreaterThanOrEqualTo(LEAST_CASES);
    }

    private String printed(final Mistake mistake, final String by) {
        String rig = Folders.resource(mistake.base() + "/rig.toml");
        String show = Folders.resource(mistake.base() + "/shows/first.toml");
        assertThat(mistake.file().equals("rig") ? rig : show).contains(mistake.line());
        if (mistake.file().equals("rig")) {
            rig = replaced(rig, mistake.line(), by);
        } else {
            show = replaced(show, mistake.line(), by);
        }
        Folders.with(folder, rig, show);
        return Folders.print(folder, Folders.read(folder)).stripTrailing();
    }

    private static String replaced(final String text, final String old, final String by) {
        final int at = text.indexOf(old);
        return text.substring(0, at) + by + text.substring(at + old.length());
    }
}
