package slackwater.controller.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import slackwater.controller.disk.StateFolder;
import slackwater.controller.gpio.LineRefusedException;
import slackwater.controller.gpio.Lines;
import slackwater.controller.live.LineFile;
import slackwater.model.Pull;

/** What a person gives wrongly to run, rest and install: one clear line, everything at rest, exit 2. */
@Timeout(60)
final class RunCommandTest {
    @TempDir
    private Path rig;

    @TempDir
    private Path state;

    private record Outcome(int exitCode, String out, String err) {}

    @BeforeEach
    void write() throws IOException {
        Files.writeString(rig.resolve("rig.toml"), RunningController.RIG);
        Files.createDirectories(rig.resolve("shows"));
        Files.writeString(rig.resolve("shows/evening.toml"), RunningController.SHOW);
    }

    private static Outcome run(final Object program, final String... arguments) {
        final StringWriter out = new StringWriter();
        final StringWriter err = new StringWriter();
        final CommandLine line =
                new CommandLine(program).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        final int exitCode = Programs.run(line, arguments);
        return new Outcome(exitCode, out.toString(), err.toString());
    }

    private Outcome run(final String command, final String controller, final String... more) throws Exception {
        final List<String> words = new ArrayList<>(List.of(command, rig.toString(), "--controller", controller));
        words.addAll(List.of(more));
        final var made = ControllerProgram.class.getDeclaredConstructor();
        made.setAccessible(true);
        return run(made.newInstance(), words.toArray(String[]::new));
    }

    private static void isOneLine(final Outcome outcome, final String line) {
        assertThat(outcome.err()).isEqualTo(line + System.lineSeparator());
        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
    }

    @Test
    void aShortRunOnVirtualPinsSaysHowLateItsScansWere() throws Exception {
        final Outcome outcome = run("run", "porch", "--pins", "virtual", "--state", state.toString(), "--for", "1");
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out().lines().toList().get(0))
                .isEqualTo("porch runs: 2 outputs at rest, 4 inputs, scan 10 ms, start 1, pins virtual");
        assertThat(outcome.out()).containsPattern("\\d+ scans, late by us: p50 \\d+, p99 \\d+, p99.9 \\d+, max \\d+");
    }

    @Test
    void aControllerThatTheRigDoesNotHaveIsNamed() throws Exception {
        for (final String command : List.of("run", "rest", "install")) {
            isOneLine(
                    run(command, "porh"), "the rig has no controller \"porh\"; it has porch; did you mean \"porch\"?");
        }
    }

    @Test
    void realPinsAreNeverReplacedByVirtualOnesInSilence() throws Exception {
        for (final String command : List.of("run", "rest")) {
            final Outcome outcome = run(command, "porch", "--state", state.toString());
            assertThat(outcome.exitCode()).isEqualTo(2);
            assertThat(outcome.err())
                    .startsWith("this computer is no board that is known")
                    .hasLineCount(1);
            assertThat(state).isEmptyDirectory();
        }
    }

    @Test
    void aRigWithErrorsShowsThemAndClaimsNothing() throws Exception {
        Files.writeString(
                rig.resolve("rig.toml"), RunningController.RIG.replace("board = \"pi-4\"", "board = \"pi-9\""));
        final Outcome outcome = run("run", "porch", "--pins", "virtual", "--state", state.toString());
        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("pi-9");
        assertThat(state).isEmptyDirectory();
    }

    @Test
    void aStateFolderThatAnotherControllerHasIsRefusedAndItsLinesAreLeftAlone() throws Exception {
        assertThat(run("rest", "porch", "--pins", "virtual", "--state", state.toString())
                        .exitCode())
                .isZero();
        final LineFile lines = new LineFile(state);
        lines.set("lid", true);
        try (StateFolder other = StateFolder.open(state, 1)) {
            isOneLine(
                    run("run", "porch", "--pins", "virtual", "--state", state.toString()),
                    "another controller runs with the state folder " + other.folder()
                            + ": end it, or give --state another folder");
            assertThat(lines.isHigh("lid")).isTrue();
        }
    }

    @Test
    void aLineThatIsBusyIsOneLineAndTheOthersAreAtRest() throws Exception {
        final Outcome outcome = run(
                new RunCommand(BusyLines::new),
                rig.toString(),
                "--controller",
                "porch",
                "--pins",
                "virtual",
                "--state",
                state.toString());
        isOneLine(outcome, "path is already used by \"another\"");
        assertThat(new LineFile(state).isHigh("lid")).isFalse();
        assertThat(new LineFile(state).isHigh("lamp")).isTrue();
    }

    private record BusyLines(Lines lines) implements Lines {
        @Override
        public Out claimOutput(final Wire wire, final boolean isHigh) {
            return lines.claimOutput(wire, isHigh);
        }

        @Override
        public In claimInput(final Wire wire, final Pull pull) {
            if (wire.name().equals("path")) {
                throw new LineRefusedException(wire + " is already used by \"another\"");
            }
            return lines.claimInput(wire, pull);
        }

        @Override
        public void release() {
            lines.release();
        }
    }

    @Test
    void restDrivesEveryLineToRestAndLeaves() throws Exception {
        assertThat(run("rest", "porch", "--pins", "virtual", "--state", state.toString())
                        .out())
                .isEqualTo("porch: 2 outputs at rest" + System.lineSeparator());
        final LineFile lines = new LineFile(state);
        lines.set("lid", true);
        lines.set("lamp", false);
        assertThat(run("rest", "porch", "--pins", "virtual", "--state", state.toString())
                        .exitCode())
                .isZero();
        assertThat(lines.isHigh("lid")).isFalse();
        assertThat(lines.isHigh("lamp")).isTrue();
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldForVirtualPins() throws Exception {
        final Path file = Files.writeString(state.resolve("file"), "");
        final Outcome outcome = run(
                "rest",
                "porch",
                "--pins",
                "virtual",
                "--state",
                file.resolve("x").toString());
        assertThat(outcome.err())
                .startsWith("virtual pins need a folder that can be written")
                .hasLineCount(1);
        assertThat(outcome.exitCode()).isEqualTo(2);
    }

    @Test
    void installMakesItsFilesOrPrintsThem() throws Exception {
        Files.writeString(
                rig.resolve("rig.toml"),
                RunningController.RIG
                        .replace("board = \"pi-4\"", "board = \"pi-4\"\nwatchdog = \"10 s\"")
                        .replace("{ drop-out", "{ pin = 12, drop-out")
                        .replace("[output.lid]", "[output.lid]\npin = 17")
                        .replace("[output.lamp]", "[output.lamp]\npin = 6"));
        final Outcome dry = run("install", "porch", "--to", state.toString(), "--dry-run");
        assertThat(dry.exitCode()).as(dry.err()).isZero();
        assertThat(state).isEmptyDirectory();
        final Outcome made = run("install", "porch", "--to", state.toString());
        assertThat(made.exitCode()).isZero();
        for (final String name :
                List.of("slackwater-porch.service", "slackwater-porch-rest", "60-slackwater-watchdog.rules")) {
            assertThat(dry.out()).contains("---- " + name, Files.readString(state.resolve(name)));
        }
        assertThat(state.resolve("slackwater-porch-rest")).isExecutable();
        assertThat(made.out()).contains("As root", "dtparam=strict_gpiod", "systemctl enable --now slackwater-porch");
    }

    @Test
    void installRefusesOutputsThatNothingCouldRest() throws Exception {
        isOneLine(
                run("install", "porch", "--to", state.toString()),
                "lid, lamp, hold-up: no pin yet, so nothing could put it to rest; write one into the rig"
                        + " (slackwater wiring --propose-pins)");
    }
}
