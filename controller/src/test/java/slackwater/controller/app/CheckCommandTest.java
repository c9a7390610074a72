package slackwater.controller.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** What a person sees who types check on the board, with all that can be wrong with what they give. */
class CheckCommandTest {
    private static final String RIG = """
            [controller.porch]
            board = "pi-4"

            [input.path]
            kind = "motion"
            warm-up = "60 s"

            [output.lid]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "2 s"
            unguarded = "bench block, nothing fitted"
            """;
    private static final String SHOW = """
            [cue.greet]
            starts = "path"
            again-after-clear = "20 s"
            steps = [ { energise = "lid", for = "1.5 s" } ]
            """;

    @TempDir
    private Path folder;

    private record Outcome(int exitCode, String out, String err) {}

    /** A command that fails as none should. */
    @Command(name = "fails")
    static final class Failing implements Runnable {
        @Override
        public void run() {
            throw new IllegalStateException("at 3 of 2");
        }
    }

    private static Outcome run(final Object program, final String... arguments) {
        final StringWriter out = new StringWriter();
        final StringWriter err = new StringWriter();
        final CommandLine line =
                new CommandLine(program).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        final int exitCode = Programs.run(line, arguments);
        final Outcome outcome = new Outcome(exitCode, out.toString(), err.toString());
        assertThat(outcome.out() + outcome.err()).doesNotContain("\tat ", "Exception in", "Caused by");
        return outcome;
    }

    private static Outcome check(final Path given, final String... more) {
        final String[] arguments = new String[more.length + 2];
        arguments[0] = "check";
        arguments[1] = given.toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        return run(ControllerProgram.class, arguments);
    }

    private Path rig() throws IOException {
        return rig(RIG.getBytes(StandardCharsets.UTF_8));
    }

    private Path rig(final byte[] rigFile) throws IOException {
        Files.write(folder.resolve("rig.toml"), rigFile);
        Files.writeString(Files.createDirectories(folder.resolve("shows")).resolve("first.toml"), SHOW);
        return folder;
    }

    private void jar(final String name, final Map<String, byte[]> entries) throws IOException {
        final Path lib = Files.createDirectories(folder.resolve("lib"));
        try (ZipOutputStream jar = new ZipOutputStream(Files.newOutputStream(lib.resolve(name)))) {
            for (final Map.Entry<String, byte[]> entry : entries.entrySet()) {
                jar.putNextEntry(new ZipEntry(entry.getKey()));
                jar.write(entry.getValue());
                jar.closeEntry();
            }
        }
    }

    private static byte[] ascii(final String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static void assertFound(final Outcome outcome, final String code, final String... words) {
        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains(code);
        assertThat(List.of(words)).allSatisfy(word -> assertThat(outcome.err()).contains(word));
    }

    @Test
    void aGoodRigIsGood() throws IOException {
        final Outcome outcome = check(rig());

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out()).isNotBlank();
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        final Path missing = folder.resolve("nowhere");

        assertFound(check(missing), "no-folder", "there is no folder " + missing);
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed() throws IOException {
        final Path file = rig().resolve("rig.toml");

        assertFound(check(file), "not-a-folder", file + " is a file", "give the folder that it is in");
    }

    @Test
    void anEmptyFolderHasNoRig() {
        assertFound(check(folder), "no-rig", "there is no file " + folder.resolve("rig.toml"));
    }

    @Test
    void aFileThatIsNotUtf8IsSaid() throws IOException {
        final byte[] notUtf8 = (RIG + "# f\u00fcr").getBytes(StandardCharsets.ISO_8859_1);

        assertFound(check(rig(notUtf8)), "UTF-8");
    }

    @Test
    void aFileThatIsNotTomlIsAFindingWithItsLine() throws IOException {
        assertFound(check(rig(ascii("[controller.porch\nboard = pi\n"))), "rig.toml:1");
    }

    @Test
    void aFileOfFiftyMegabytesIsRefusedUnread() throws IOException {
        final Path large = rig().resolve("rig.toml");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(50L * 1024 * 1024);
        }

        final Outcome outcome = check(folder);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("rig.toml").hasSizeLessThan(2_000);
    }

    @Test
    void aShowThatIsNotThereIsSaidWithTheNearestName() throws IOException {
        assertFound(check(rig(), "--show", "frist"), "unknown-show", "did you mean \"first\"?");
    }

    @Test
    void aWrongOptionGivesOneLineThenTheHelp() throws IOException {
        final Outcome outcome = check(rig(), "--jsn");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().lines().findFirst()).hasValue("Unknown option: '--jsn'");
        assertThat(outcome.err()).contains("Usage: slackwater-controller check", "--json");
    }

    @Test
    void aMissingFolderNameGivesOneLineThenTheHelp() {
        final Outcome outcome = run(ControllerProgram.class, "check");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err().lines().findFirst()).hasValue("Missing required parameter: 'RIG'");
        assertThat(outcome.err()).contains("Usage: slackwater-controller check");
    }

    @Test
    void noArgumentsAtAllGiveTheHelpAndAreWrong() {
        final Outcome outcome = run(ControllerProgram.class);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains("Usage: slackwater-controller");
    }

    @Test
    void helpIsGoodAndHasAnExample() {
        final Outcome outcome = run(ControllerProgram.class, "check", "--help");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .contains("Example:", "slackwater check rigs/sea-cave", "Exit: 0 no errors, 2 otherwise.");
    }

    @Test
    void whatShouldNotHappenIsOneLineAndFallsShort() {
        final CommandLine program = new CommandLine(ControllerProgram.class).addSubcommand(new Failing());
        final StringWriter err = new StringWriter();
        program.setErr(new PrintWriter(err, true));
        assertThat(Programs.run(program, "fails")).isEqualTo(1);
        assertThat(err.toString().lines())
                .containsExactly("this should not have happened: java.lang.IllegalStateException: at 3 of 2"
                        + "; please report it with the command and the rig");
    }

    @Test
    void jsonOfAGoodRigIsOneObjectAndNothingElse() throws IOException {
        final Outcome outcome = check(rig(), "--json");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .startsWith("{\"filesRead\":2,\"errors\":0,\"findings\":[")
                .endsWith("]}\n");
        assertThat(outcome.out().lines()).hasSize(1);
    }

    @Test
    void jsonOfAWrongRigNamesEachFindingWithItsPlace() throws IOException {
        final Outcome outcome = check(rig(ascii(RIG.replace("spring-returns", "spring-return"))), "--json");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .startsWith("{\"filesRead\":2,\"errors\":1,\"findings\":[{\"severity\":\"error\",\"code\":\"")
                .containsSubsequence(
                        "\"file\":\"",
                        "rig.toml\"",
                        "\"line\":10",
                        "\"column\":",
                        "\"message\":\"",
                        "\"why\":\"",
                        "\"fix\":\"");
    }

    @Test
    void jsonOfAFindingWithoutAPlaceHasNone() {
        final Outcome outcome = check(folder, "--json");

        assertThat(outcome.out())
                .startsWith("{\"filesRead\":0,\"errors\":1,\"findings\":[{\"severity\":\"error\",\"code\":\"no-rig\",")
                .doesNotContain("\"file\":", "\"line\":");
    }

    @Test
    void aJarThatIsNoJarIsAFinding() throws IOException {
        final Path lib = Files.createDirectories(rig().resolve("lib"));
        Files.writeString(lib.resolve("props.jar"), "no jar at all");
        Files.writeString(lib.resolve("notes.txt"), "nobody minds this");

        final Outcome outcome = check(folder);

        assertFound(outcome, "bad-library", lib.resolve("props.jar") + " is no jar that can be opened");
        assertThat(outcome.err()).doesNotContain("notes.txt");
    }

    @Test
    void aJarWithNothingInItForUsIsNoFinding() throws IOException {
        rig();
        jar("empty.jar", Map.of("readme.txt", ascii("nothing here")));

        assertThat(check(folder).exitCode()).isZero();
    }

    @Test
    void aJarThatPromisesAClassWhichItDoesNotHaveIsAFinding() throws IOException {
        rig();
        jar("kind.jar", Map.of("META-INF/services/slackwater.model.kind.OutputKind", ascii("no.such.Kind\n")));
        assertFound(check(folder), "bad-kind", "no.such.Kind");
    }

    @Test
    void aJarThatPromisesACueWhichItDoesNotHaveIsAFinding() throws IOException {
        rig();
        jar("cue.jar", Map.of("META-INF/services/slackwater.controller.cue.CueCode", ascii("no.such.Cue\n")));

        assertFound(check(folder), "bad-code", "no.such.Cue");
    }

    @Test
    void aClassThatIsDamagedIsAFindingForKindsAndForCues() throws IOException {
        rig();
        final Map<String, byte[]> entries = new TreeMap<>();
        entries.put("META-INF/services/slackwater.model.kind.InputKind", ascii("damaged.Kind\n"));
        entries.put("damaged/Kind.class", ascii("CAFE"));
        jar("kind.jar", entries);
        assertFound(check(folder), "bad-kind");

        Files.delete(folder.resolve("lib").resolve("kind.jar"));
        entries.clear();
        entries.put("META-INF/services/slackwater.controller.cue.CueCode", ascii("damaged.Cue\n"));
        entries.put("damaged/Cue.class", ascii("CAFE"));
        jar("cue.jar", entries);
        assertFound(check(folder), "bad-code");
    }

    @Test
    void aCueInCodeThatNoLibraryBringsIsAFinding() throws IOException {
        rig();
        Files.writeString(folder.resolve("shows").resolve("first.toml"), """
                [cue.greet]
                starts = "path"
                code = "tide-organ"
                """);

        assertFound(check(folder), "unknown-code", "no library in lib brings a cue in code called \"tide-organ\"");
    }
}
