package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SimulateCommandTest {
    private static final Path FULL_DISK = Path.of("/dev/full");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"first", "driftwood", "sea-cave"})
    void everyExampleRunsAnHourAndBreaksNoRule(final String name) {
        final Cli.Outcome outcome =
                Cli.run("simulate", Cli.example(name), "--hours", 1).isGood();

        assertThat(outcome.out())
                .contains("1 h 0 min", "seed 1 ", "visitors ", "cues started ", "all at rest ", "none: every rule held")
                .containsPattern("digest +[0-9a-f]{64}\n");
    }

    @Test
    void jsonIsOneObjectWithEverythingThatAScriptNeeds() throws IOException {
        final Cli.Outcome outcome = Cli.run("simulate", Cli.example("sea-cave"), "--hours", 2, "--seed", 7, "--json")
                .isGood();
        final Json json = Json.only(outcome.out());

        assertThat(json.number("seed")).isEqualTo(7);
        assertThat(json.number("virtualSeconds")).isEqualTo(7200);
        assertThat(json.number("wallSeconds")).isBetween(0.001, 600.0);
        assertThat(json.number("scans")).as("two controllers, 10 ms").isEqualTo(2 * 720_000);
        assertThat(json.number("visitors")).isGreaterThan(20);
        assertThat(json.object("cuesStarted").number("north-clam")).isPositive();
        assertThat(json.object("actuations").number("north-clam-lid")).isPositive();
        assertThat(json.object("refusals").fields()).isNotNull();
        assertThat(json.objects("violations")).isEmpty();
        assertThat(json.text("digest")).matches("[0-9a-f]{64}");
    }

    @Test
    void aSeedGivesTheSameDigestWithAndWithoutSkippingQuietScansAndAnotherSeedAnother() throws IOException {
        final String seven = digest("--seed", "7");

        assertThat(digest("--seed", "7")).isEqualTo(seven);
        assertThat(digest("--seed", "7", "--no-skip")).isEqualTo(seven);
        assertThat(digest("--seed", "8")).isNotEqualTo(seven);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.0", "-1, -1.0", "72.01, 72.01", "73, 73.0", "NaN, NaN"})
    void hoursOutsideTheirRangeAreNamed(final String given, final String shown) {
        assertThat(simulate("--hours", given).isRefused().err())
                .hasLineCount(1)
                .isEqualTo("--hours must be more than 0 and at most 72, but was " + shown + "\n");
    }

    @Test
    void hoursAtTheEndsOfTheirRangeRun() {
        assertThat(simulate("--hours", "0.0001").isGood().out()).contains("36 scans");
        assertThat(simulate("--hours", "72").isGood().out()).contains("72 h 0 min");
    }

    @Test
    void aShowThatIsNotThereIsNamedWithTheNearestOne() {
        assertThat(simulate("--show", "frist").isRefused().err())
                .contains("unknown-show", "no show is called \"frist\"", "did you mean \"first\"?");
    }

    @Test
    void walkersThatAreNotThereAreNamed() {
        assertThat(simulate("--walkers", "nobody.txt").isRefused().err())
                .hasLineCount(1)
                .isEqualTo("nobody.txt: there is no such file; name a file of measured positions\n");
    }

    @Test
    void aLineOfWalkersThatCannotBeReadIsNamedWithItsPlace() throws IOException {
        final Path file = Files.writeString(folder.resolve("walkers.txt"), "1 0 100 200 170\n1 1 far 200 170\n");

        assertThat(simulate("--walkers", file, "--walkers-unit", "0.01")
                        .isRefused()
                        .err())
                .hasLineCount(1)
                .startsWith(file + ":2: ")
                .contains("far");
    }

    @ParameterizedTest
    @CsvSource({
        "--walkers-rate=0, --walkers-rate and --walkers-unit must be more than 0",
        "--walkers-unit=-1, --walkers-rate and --walkers-unit must be more than 0",
        "--walkers-move=3, '--walkers-move takes two numbers, such as 8,-1'"
    })
    void walkersLaidOutImpossiblyAreRefused(final String option, final String message) throws IOException {
        final Path file = Files.writeString(folder.resolve("walkers.txt"), "1 0 100 200 170\n1 1 110 200 170\n");

        assertThat(simulate("--walkers", file, option).isRefused().err()).isEqualTo(message + "\n");
    }

    @Test
    void measuredPeopleWalkPastTheSeaCave() throws IOException {
        final Optional<Path> measured = measuredWalkers();
        assumeTrue(
                measured.isPresent(),
                "measured walkers not here: no folder shared/data/walkers beside a parent folder");

        final Json json = Json.only(Cli.run(
                        "simulate",
                        Cli.example("sea-cave"),
                        "--hours",
                        1,
                        "--json",
                        "--walkers",
                        measured.orElseThrow().resolve("corridor-one-way-sparse.txt"))
                .isGood()
                .out());

        assertThat(json.number("visitors")).as("the file's own count of people").isEqualTo(61);
        assertThat(json.object("cuesStarted").fields()).isNotEmpty();
        assertThat(json.objects("violations")).isEmpty();
    }

    @Test
    void anEveningsOwnWaveformPlayedBackIsTheSameEveningWithNobodyThere() throws IOException {
        final Path vcd = folder.resolve("evening.vcd");
        final String digest = digest("--vcd", vcd);

        final Cli.Outcome again = Cli.run("simulate", Cli.example("sea-cave"), "--hours", 1, "--json", "--inputs", vcd)
                .isGood();
        final Json json = Json.only(again.out());

        assertThat(json.text("digest")).isEqualTo(digest);
        assertThat(json.number("visitors")).isZero();
        assertThat(again.err()).as("what it could not use").contains("mode is a reg of 3 bits and is left out");
    }

    @Test
    void recordedInputsAndMeasuredWalkersExcludeEachOther() {
        assertThat(simulate("--inputs", folder.resolve("a.vcd"), "--walkers", folder.resolve("b.txt"))
                        .isRefused()
                        .err())
                .isEqualToIgnoringNewLines(
                        "--inputs and --walkers exclude each other: recorded inputs already tell who came");
    }

    @Test
    void aRecordingThatIsNoWaveformIsNamedWithItsPlace() throws IOException {
        final Path file = Files.writeString(folder.resolve("evening.vcd"), "\nDear diary,\n");

        assertThat(simulate("--inputs", file).isRefused().err()).hasLineCount(1).startsWith(file + ":2: \"Dear\"");
        assertThat(simulate("--inputs", folder.resolve("none.vcd")).isRefused().err())
                .hasLineCount(1)
                .contains("none.vcd: does not exist");
        assertThat(simulate("--inputs", folder).isRefused().err())
                .hasLineCount(1)
                .contains("is a folder");
    }

    @Test
    void reportsAreWrittenWhereTheyWereAskedFor() throws IOException {
        final Path vcd = folder.resolve("evening.vcd");
        final Path html = folder.resolve("evening.html");

        simulate("--hours", "0.1", "--vcd", vcd, "--html", html).isGood();

        assertThat(Files.readString(vcd)).startsWith("$").contains("$enddefinitions $end", "lid", "path");
        assertThat(Files.readString(html))
                .startsWith("<!DOCTYPE html>")
                .contains("<svg")
                .endsWith("</html>\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--vcd", "--html"})
    void aFullDiskCostsTheReportButNotTheSummary(final String report) {
        assumeTrue(Files.isWritable(FULL_DISK), "this system has no /dev/full to stand for a full disk");

        final Cli.Outcome outcome =
                simulate("--hours", "0.1", report, FULL_DISK).speaksPlainly();

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).contains("visitors ", "digest ");
        assertThat(reportLines(outcome))
                .isEqualTo("could not write /dev/full: No space left on device; "
                        + "free some room, or write it to another disk");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--vcd", "--html"})
    void aReportUnderAFileIsToldAndTheSummaryStillPrinted(final String report) throws IOException {
        final Path file = Files.writeString(folder.resolve("note"), "");

        final Cli.Outcome outcome =
                simulate("--hours", "0.1", report, file.resolve("evening")).speaksPlainly();

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).contains("visitors ", "digest ");
        assertThat(reportLines(outcome))
                .isEqualTo("could not write " + file.resolve("evening") + ": Not a directory; " + file
                        + " is a file, name a folder");
    }

    @Test
    void aLostReportLeavesTheJsonAlone() throws IOException {
        final Cli.Outcome outcome = simulate("--hours", "0.1", "--json", "--vcd", folder, "--html", folder)
                .speaksPlainly();

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(Json.only(outcome.out()).objects("violations")).isEmpty();
        assertThat(outcome.err().lines().filter(line -> line.startsWith("could not write")))
                .hasSize(2)
                .allMatch(line -> line.contains("it is a folder"));
    }

    @Test
    void theDemoPlaysBothActsInTwentyFiveLinesAndSaysWhatToTryNext() throws IOException {
        System.setProperty("slackwater.home", "..");
        try {
            final Path html = folder.resolve("evening.html");
            final Cli.Outcome outcome = Cli.run("demo", "--html", html).isGood();

            assertThat(outcome.out().lines()).hasSizeLessThanOrEqualTo(25);
            assertThat(outcome.out()).startsWith("Act 1").contains("What was changed:", "Act 2", "Try next:");
            assertThat(html).isNotEmptyFile();
        } finally {
            System.clearProperty("slackwater.home");
        }
    }

    @Test
    void theDemoWithoutItsRigSaysHowToStartIt() {
        System.setProperty("slackwater.home", folder.toString());
        try {
            assertThat(Cli.run("demo").isRefused().err()).hasLineCount(1).contains("sea-cave", "launcher");
        } finally {
            System.clearProperty("slackwater.home");
        }
    }

    private static String digest(final Object... options) throws IOException {
        final Object[] all = new Object[options.length + 5];
        System.arraycopy(new Object[] {"simulate", Cli.example("sea-cave"), "--hours", "1", "--json"}, 0, all, 0, 5);
        System.arraycopy(options, 0, all, 5, options.length);
        return Json.only(Cli.run(all).isGood().out()).text("digest");
    }

    private static Cli.Outcome simulate(final Object... options) {
        final Object[] all = new Object[options.length + 2];
        all[0] = "simulate";
        all[1] = Cli.example("first");
        System.arraycopy(options, 0, all, 2, options.length);
        return Cli.run(all);
    }

    /** What stderr says beside what was assumed of a rig without places. */
    private static String reportLines(final Cli.Outcome outcome) {
        return String.join(
                "\n",
                outcome.err()
                        .lines()
                        .filter(line -> !line.startsWith("assumed: "))
                        .toList());
    }

    private static Optional<Path> measuredWalkers() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            final Path candidate = at.resolve("shared").resolve("data").resolve("walkers");
            if (Files.isDirectory(candidate)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }
}
