package slackwater.controller.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every way of ending the program, as a process of its own with the lid up and the lamp on. */
@Timeout(300)
@EnabledOnOs(OS.LINUX)
final class RunKillsTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"TERM, 143", "INT, 130"})
    void whoEndsItFindsEverythingAtRest(final String signal, final int exitCode)
            throws IOException, InterruptedException {
        try (RunningController porch = RunningController.start(folder)) {
            porch.lidUp();
            porch.signal(signal);
            assertThat(porch.exitCode()).isEqualTo(exitCode);
            porch.areAtRest("after " + signal);
            assertThat(porch.err()).isEmpty();
        }
    }

    /** Without a stop action a killed program leaves a real line driving (handbook 9.5); so do virtual ones. */
    @Test
    void aKilledProgramLeavesItsLinesAndTheNextStartRestsThemNotArmed() throws IOException, InterruptedException {
        try (RunningController porch = RunningController.start(folder)) {
            porch.lidUp();
            porch.signal("KILL");
            assertThat(porch.exitCode()).isEqualTo(137);
            assertThat(porch.isHigh("lid")).isTrue();
        }
        final String before;
        try (RunningController again = RunningController.start(folder)) {
            again.areAtRest("when it says that it runs");
            before = again.journal();
            Thread.sleep(500);
            again.areAtRest("half a second later");
            assertThat(again.out()).contains("start 2");
            assertThat(before.split("\"mode\":\"ARMED\"", -1))
                    .as("armed only before the kill")
                    .hasSize(2);
        }
    }

    @Test
    void afterAPauseLongerThanTheDropOutPulsesAreWithheldAndNothingFiresAgain()
            throws IOException, InterruptedException {
        try (RunningController porch = RunningController.start(folder)) {
            porch.lidUp();
            porch.signal("STOP");
            Thread.sleep(2_000);
            assertThat(porch.isHigh("lid")).as("frozen").isTrue();
            porch.signal("CONT");
            porch.await("the lid is down", () -> !porch.isHigh("lid"));
            porch.await(
                    "the fault is in the journal",
                    () -> porch.journal().contains("no scan for longer than the hold-up relay's drop-out"));
            final boolean level = porch.isHigh("hold-up");
            for (int look = 0; look < 50; look++) {
                assertThat(porch.isHigh("hold-up")).as("no edges for the relay").isEqualTo(level);
                porch.areAtRest("after the pause");
                Thread.sleep(10);
            }
            assertThat(porch.isAlive()).as("a frozen process is no hung scan").isTrue();
        }
    }

    @Test
    void aScanThatHangsIsEndedByItsSupervisorWithEverythingAtRest() throws IOException, InterruptedException {
        try (RunningController porch = new RunningController(folder, HangingProgram.class.getName())) {
            porch.await("it runs", () -> porch.out().contains("porch runs"));
            porch.lidUp();
            Files.createFile(folder.resolve("hang"));
            assertThat(porch.exitCode()).isEqualTo(1);
            porch.areAtRest("after the halt");
            assertThat(porch.err())
                    .isEqualTo(
                            "no proved scan for 250000000 ns: every output was put to rest and the program is ended\n");
        }
    }

    @Test
    void aScanThatRunsOutOfMemoryRestsEverythingAndEnds() throws IOException, InterruptedException {
        try (RunningController porch = new RunningController(folder, HangingProgram.class.getName())) {
            porch.await("it runs", () -> porch.out().contains("porch runs"));
            porch.lidUp();
            Files.createFile(folder.resolve("exhaust"));
            assertThat(porch.exitCode()).isEqualTo(1);
            porch.areAtRest("after the error");
            assertThat(porch.err())
                    .isEqualTo(
                            "the scan broke (java.lang.OutOfMemoryError: as a test asked): every output is at rest\n");
        }
    }

    @Test
    void aRigChangedUnderARunningControllerEndsItAtRest() throws IOException, InterruptedException {
        try (RunningController porch = RunningController.start(folder)) {
            porch.lidUp();
            Files.writeString(folder.resolve("rig.toml"), RunningController.RIG + "\n# another word\n");
            assertThat(porch.exitCode()).isEqualTo(2);
            porch.areAtRest("after the change");
            assertThat(porch.err())
                    .isEqualTo("the rig's files have changed since they were checked: every output is at rest;"
                            + " check the rig and start again\n");
        }
    }

    @Test
    void aStopOutlivesAKill() throws IOException, InterruptedException {
        try (RunningController porch = RunningController.start(folder)) {
            porch.await(
                    "the open loop is on disk",
                    () -> Files.readString(porch.state().resolve("latches")).contains("latched\tstop"));
            porch.signal("KILL");
            porch.exitCode();
        }
        try (RunningController again = RunningController.start(folder)) {
            again.await("latched again", () -> again.journal().contains("it was latched before the restart"));
        }
    }
}
