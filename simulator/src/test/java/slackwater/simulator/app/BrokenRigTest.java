package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A rig that cannot be read: every command says why, exits with 2 and starts nothing. */
class BrokenRigTest {
    private static final int MB = 1_000_000;
    private static final Pattern FINDING =
            Pattern.compile("(\\w+\\.toml):(\\d+):(\\d+): (?:error|warning) ([a-z-]+): ");
    private static final Pattern MARK = Pattern.compile("# wrong: ([a-z-]+)");
    private static final Pattern LINE_END = Pattern.compile("\n");

    /** Every mark names the finding that its line must bring. */
    private static final String RIG_OF_MISTAKES = """
            nam = "Twenty mistakes"                # wrong: unknown-key
            scan = "4 bar"                         # wrong: bad-quantity

            [contoller.porch]                      # wrong: unknown-table
            board = "pi-4"

            [controller.north]
            board = "pi-44"                        # wrong: unknown-word

            [controller.south]
            board = "pi-4"

            [input.path]
            kind = "motoin"                        # wrong: unknown-word

            [input.gate]
            kind = "beam"
            controller = "sotuh"                   # wrong: unknown-controller
            pin = "21"                             # wrong: wrong-type
            active = "hihg"                        # wrong: unknown-word

            [input.wall]                           # wrong: missing-key
            controller = "south"

            [output.lid]
            kind = "valve"
            controller = "south"
            pin = 5
            on-power-loss = "springs-back"         # wrong: unknown-word
            longest-on = "-2 s"                    # wrong: bad-quantity
            starts = "six a minute"                # wrong: bad-quantity
            unguarded = "bench block, nothing fitted"

            [output.jet]
            kind = "valve"
            controller = "south"
            pin = 17
            longest-on = "2 sec"                   # wrong: bad-quantity
            at = ["8 m"]                           # wrong: wrong-type
            reach = "0.7 kg"                       # wrong: bad-quantity
            unguarded = true                       # wrong: wrong-type
            colour = "red"                         # wrong: unknown-key

            [permissive.lid-clear]
            outputs = ["lidd"]                     # wrong: unknown-output
            needs = ["not gaet"]                   # wrong: unknown-input
            begun = "stop"                         # wrong: unknown-word
            """;

    private static final String SHOW_OF_MISTAKES = """
            [cue.greet]                            # wrong: missing-key
            strats = "path"                        # wrong: unknown-key
            again-after-clear = "soon"             # wrong: bad-quantity
            steps = [
              { energise = "lidd", for = "1 s" },  # wrong: unknown-output
              { energize = "lid", for = "1 s" },   # wrong: not-a-step
            ]
            """;

    @TempDir
    private Path folder;

    /** A finding as far as a person finds the place by it. */
    private record Found(String file, int line, String code) {}

    @ParameterizedTest
    @ValueSource(strings = {"check", "simulate", "wiring"})
    void aRigThatIsMissing(final String command) {
        final Cli.Outcome outcome = Cli.run(command, folder.resolve("nowhere")).isRefused();

        assertThat(outcome.err()).contains("no-folder", "nowhere", "Nothing was started");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "simulate", "wiring"})
    void aFolderWithNothingInIt(final String command) {
        assertThat(Cli.run(command, folder).isRefused().err()).contains("no-rig", "rig.toml", "Nothing was started");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "simulate", "wiring"})
    void aFileInPlaceOfTheFolder(final String command) throws IOException {
        final Path file = Files.writeString(folder.resolve("rig.toml"), "name = \"x\"\n");

        assertThat(Cli.run(command, file).isRefused().err()).contains("not-a-folder", "Nothing was started");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "simulate", "wiring"})
    void aFileThatIsNotUtf8(final String command) throws IOException {
        Files.write(folder.resolve("rig.toml"), new byte[] {'n', '=', '"', (byte) 0xFF, (byte) 0xFE, '"', '\n'});

        assertThat(Cli.run(command, folder).isRefused().err()).contains("not-utf8", "byte 3", "Nothing was started");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "simulate", "wiring"})
    void aFileThatIsNotToml(final String command) throws IOException {
        Files.writeString(folder.resolve("rig.toml"), "name = \"x\"\nthis is a letter to grandmother\n");

        assertThat(Cli.run(command, folder).isRefused().err()).contains("rig.toml:2:6: error not-toml");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "simulate", "wiring"})
    void aFileOf50MegabytesIsNotEvenRead(final String command) throws IOException {
        final Path file = folder.resolve("rig.toml");
        try (SeekableByteChannel sparse =
                Files.newByteChannel(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            sparse.position(50L * MB - 1);
            sparse.write(java.nio.ByteBuffer.allocate(1));
        }
        final Cli.Outcome outcome = Cli.run(command, folder).isRefused();

        assertThat(outcome.err()).contains("too-large", "50000000 bytes", "Nothing was started");
        assertThat(outcome.err().length()).isLessThan(1000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "simulate", "wiring"})
    void aRigFullOfMistakesHearsOfAllOfThemAtOnceEachWithItsPlace(final String command) throws IOException {
        Cli.rig(folder, RIG_OF_MISTAKES, SHOW_OF_MISTAKES);
        final List<Found> expected = new ArrayList<>(marks("rig.toml", RIG_OF_MISTAKES));
        expected.addAll(marks("first.toml", SHOW_OF_MISTAKES));

        final Cli.Outcome outcome = Cli.run(command, folder).isRefused();

        assertThat(expected).hasSizeGreaterThanOrEqualTo(20);
        assertThat(found(outcome.err())).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(outcome.err())
                .contains("2 files read, " + expected.size() + " errors, 0 warnings. Nothing was started");
    }

    @Test
    void theSameMistakesForAScript() throws IOException {
        Cli.rig(folder, RIG_OF_MISTAKES, SHOW_OF_MISTAKES);

        final Cli.Outcome outcome = Cli.run("check", folder, "--json");
        final Json json = Json.only(outcome.out());

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).isEmpty();
        assertThat(json.number("errors"))
                .isEqualTo(found(Cli.run("check", folder).err()).size());
        assertThat(json.objects("findings"))
                .hasSize((int) json.number("errors"))
                .allSatisfy(finding -> {
                    assertThat(finding.text("file")).endsWith(".toml");
                    assertThat(finding.number("line")).isPositive();
                    assertThat(finding.number("column")).isPositive();
                    assertThat(finding.text("message")).isNotBlank();
                    assertThat(finding.text("why")).isNotBlank();
                    assertThat(finding.text("fix")).isNotBlank();
                });
    }

    private static List<Found> marks(final String file, final String text) {
        final List<Found> marks = new ArrayList<>();
        final String[] lines = LINE_END.split(text);
        for (int i = 0; i < lines.length; i++) {
            final int line = i + 1;
            MARK.matcher(lines[i])
                    .results()
                    .map(mark -> new Found(file, line, mark.group(1)))
                    .forEach(marks::add);
        }
        return marks;
    }

    private static List<Found> found(final String text) {
        return FINDING.matcher(text).results().map(BrokenRigTest::place).toList();
    }

    private static Found place(final MatchResult found) {
        return new Found(found.group(1), Integer.parseInt(found.group(2)), found.group(4));
    }
}
