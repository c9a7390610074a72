package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first quarter of an hour: new, check, simulate, wiring. */
class NewCommandTest {
    private static final Pattern PIN_LINE = Pattern.compile("pin = \\d+\n");
    private static final Path NOWHERE = Path.of("/proc/slackwater-test");

    @TempDir
    private Path folder;

    @Test
    void aNewRigHasTwentyLinesAtMostAndNothingInTheFolderBeside() throws IOException {
        final Path yard = newYard();

        assertThat(files(yard)).containsExactly("rig.toml", "shows/first.toml");
        final long lines = Stream.of("rig.toml", "shows/first.toml")
                .flatMap(file -> read(yard.resolve(file)).lines())
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .count();
        assertThat(lines).isBetween(10L, 20L);
    }

    @Test
    void aNewRigIsTheExampleOfTheSameName() {
        final Path yard = newYard();

        assertThat(read(yard.resolve("rig.toml")))
                .isEqualTo(read(Cli.example("first").resolve("rig.toml")));
        assertThat(read(yard.resolve("shows/first.toml")))
                .isEqualTo(read(Cli.example("first").resolve("shows/first.toml")));
    }

    @Test
    void whatItSaysToTryNextWorks() {
        final Path yard = newYard();

        assertThat(Cli.run("check", yard).isGood().out()).contains("0 errors, 1 warning.", "not-wired");
        assertThat(Cli.run("simulate", yard, "--hours", 1).isGood().out()).containsPattern("\\d+ +greet\n");
        assertThat(Cli.run("wiring", yard).isGood().out()).contains("Not wired yet", "lid", "path");
    }

    @Test
    void proposedPinsFillTheGapsAndTouchNothingElse() {
        final Path yard = newYard();
        final String before = read(yard.resolve("rig.toml"));

        final Cli.Outcome outcome = Cli.run("wiring", yard, "--propose-pins").isGood();

        final String after = read(yard.resolve("rig.toml"));
        assertThat(outcome.out()).contains("[output.lid] pin = ", "[input.path] pin = ");
        assertThat(PIN_LINE.matcher(after).results().count()).isEqualTo(2);
        assertThat(PIN_LINE.matcher(after).replaceAll("")).isEqualTo(before);
        assertThat(Cli.run("check", yard).isGood().out()).isEqualTo("2 files read, 0 errors, 0 warnings.\n\n");
        assertThat(files(yard)).containsExactly("rig.toml", "shows/first.toml");
    }

    @Test
    void pinsThatAreThereAreKeptAndASecondProposalChangesNothing() {
        final Path yard = newYard();
        Cli.run("wiring", yard, "--propose-pins").isGood();
        final String filled = read(yard.resolve("rig.toml"));

        assertThat(Cli.run("wiring", yard, "--propose-pins").isGood().out()).contains("nothing was changed");

        assertThat(read(yard.resolve("rig.toml"))).isEqualTo(filled);
    }

    @Test
    void windowsLineEndsAndRemarksOutliveProposedPins() throws IOException {
        final Path yard = newYard();
        final Path rig = yard.resolve("rig.toml");
        final String before = "# Grüße\r\n" + read(rig).replace("\n", "\r\n") + "# the end, without a line end";
        Files.writeString(rig, before);

        Cli.run("wiring", yard, "--propose-pins").isGood();

        assertThat(read(rig).replaceAll("pin = \\d+\r\n", "")).isEqualTo(before);
        assertThat(Cli.run("check", yard).isGood().out()).contains("0 errors, 0 warnings.");
    }

    @Test
    void aRigIsNeverOverwritten() {
        final Path yard = newYard();
        final String before = read(yard.resolve("rig.toml"));

        final Cli.Outcome outcome = Cli.run("new", yard).isRefused();

        assertThat(outcome.err()).hasLineCount(1).contains("already holds a rig", "name another folder");
        assertThat(read(yard.resolve("rig.toml"))).isEqualTo(before);
    }

    @Test
    void aFolderWithOtherThingsInItIsLeftAlone() throws IOException {
        Files.writeString(folder.resolve("diary.txt"), "dear diary");

        assertThat(Cli.run("new", folder).isRefused().err()).hasLineCount(1).contains("is not empty", "name another");
        assertThat(files(folder)).containsExactly("diary.txt");
    }

    @Test
    void anEmptyFolderIsFilled() throws IOException {
        Cli.run("new", Files.createDirectory(folder.resolve("empty"))).isGood();

        assertThat(files(folder.resolve("empty"))).containsExactly("rig.toml", "shows/first.toml");
    }

    @Test
    void aFileIsNoFolder() throws IOException {
        final Path file = Files.writeString(folder.resolve("note"), "keep me");

        assertThat(Cli.run("new", file).isRefused().err()).isEqualTo(file + " is a file; name a folder\n");
        assertThat(read(file)).isEqualTo("keep me");
    }

    @Test
    void aFolderUnderAFileCannotBeMade() throws IOException {
        final Path file = Files.writeString(folder.resolve("note"), "keep me");

        final Cli.Outcome outcome = Cli.run("new", file.resolve("yard")).speaksPlainly();

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).hasLineCount(1).contains("cannot be written: Not a directory", "name another folder");
    }

    @Test
    void aPlaceWhereNobodyMayWriteIsNamed() {
        assumeTrue(Files.isDirectory(Path.of("/proc")), "this system has no /proc, where no folder can be made");

        final Cli.Outcome outcome = Cli.run("new", NOWHERE).speaksPlainly();

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err())
                .isEqualTo(NOWHERE + " cannot be written: no such file or folder; name another folder\n");
    }

    private Path newYard() {
        final Path yard = folder.resolve("my-yard");
        final Cli.Outcome outcome = Cli.run("new", yard).isGood();
        assertThat(outcome.out()).contains("rig.toml", "Try next:", "check " + yard, "simulate " + yard);
        assertThat(outcome.err()).isEmpty();
        return yard;
    }

    private static String read(final Path file) {
        try {
            return Files.readString(file);
        } catch (final IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static List<String> files(final Path yard) {
        try (Stream<Path> all = Files.walk(yard)) {
            return all.filter(Files::isRegularFile)
                    .map(file -> yard.relativize(file).toString())
                    .sorted()
                    .toList();
        } catch (final IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
