package slackwater.controller.gpio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.controller.pins.Pins.ReadBack;
import slackwater.model.Rig;
import slackwater.model.file.RigFolder;
import slackwater.model.finding.Finding;

/** Every line is claimed at rest, whole or not at all, and read as it is (S7, S9, S10). */
final class GpioPinsTest {
    private static final String RIG = """
            [controller.porch]
            board = "pi-4"
            hold-up = { pin = 12, drop-out = "400 ms", seen-pin = 4 }

            [input.loop]
            kind = "stop-loop"
            pins = { porch = 5 }
            active = "low"
            pull = "up"

            [input.path]
            kind = "motion"
            pin = 16
            active = "high"
            pull = "none"

            [output.lid]
            kind = "valve"
            pin = 17
            active = "high"
            on-power-loss = "spring-returns"
            longest-on = "2 s"
            unguarded = "bench block, nothing fitted"

            [output.lamp]
            kind = "lamp"
            pin = 6
            active = "low"
            feedback = "pad"
            unguarded = "12 V lamp, touch-safe"
            """;
    private static final int LOOP = 0;
    private static final int LID = 0;
    private static final int LAMP = 1;

    @TempDir
    private Path folder;

    private Rig rig;
    private final FakeLines lines = new FakeLines();

    @BeforeEach
    void read() throws IOException {
        Files.writeString(folder.resolve("rig.toml"), RIG);
        final var reading = RigFolder.read(folder, Optional.empty(), GpioPinsTest.class.getClassLoader());
        assertThat(reading.findings()).noneMatch(Finding::isError);
        rig = reading.rig().orElseThrow();
    }

    private GpioPins claim() {
        return GpioPins.claim(rig, rig.controllers().get(0), lines);
    }

    @Test
    void outputsAreClaimedAtTheirRestLevelBeforeAnyInput() {
        claim();
        assertThat(lines.told)
                .containsExactly(
                        "claim GPIO17 (lid) low",
                        "claim GPIO6 (lamp) high",
                        "claim GPIO12 (hold-up) low",
                        "sense GPIO4 (hold-up-seen) pull DOWN",
                        "sense GPIO5 (loop) pull UP",
                        "sense GPIO16 (path) pull NONE");
    }

    @Test
    void aRefusedLinePutsTheOthersToRestBeforeTheyAreGivenBack() {
        lines.refused = "path";
        assertThatThrownBy(this::claim).isInstanceOf(LineRefusedException.class).hasMessage("GPIO16 (path) is busy");
        assertThat(lines.told).endsWith("write lid low", "write lamp high", "release");
    }

    @Test
    void theFirstOutputRefusedClaimsNothing() {
        lines.refused = "lid";
        assertThatThrownBy(this::claim).hasMessage("GPIO17 (lid) is busy");
        assertThat(lines.told).containsExactly("release");
    }

    @Test
    void aLevelIsReadRawAtEverySample() {
        final GpioPins pins = claim();
        assertThat(pins.isHigh(LOOP)).isTrue();
        lines.level.put("loop", false);
        assertThat(pins.isHigh(LOOP)).as("not before the next sample").isTrue();
        pins.sample();
        assertThat(pins.isHigh(LOOP)).isFalse();
        assertThat(pins.hadEdge(LOOP)).isFalse();
    }

    @Test
    void aPulseShorterThanAScanIsAnEdgeAndAChangeThatStaysIsNone() {
        final GpioPins pins = claim();
        lines.edges.put("loop", true);
        pins.sample();
        assertThat(pins.hadEdge(LOOP)).isTrue();
        assertThat(pins.isHigh(LOOP)).isTrue();
        pins.sample();
        assertThat(pins.hadEdge(LOOP)).as("taken").isFalse();
        lines.edges.put("loop", true);
        lines.level.put("loop", false);
        pins.sample();
        assertThat(pins.hadEdge(LOOP)).isFalse();
    }

    @Test
    void onlyAPadThatTheRigNamesIsReadBackAndItsLevelIsNoEcho() {
        final GpioPins pins = claim();
        assertThat(pins.readBack(LID)).isEqualTo(ReadBack.UNKNOWN);
        assertThat(pins.readBack(LAMP)).isEqualTo(ReadBack.AT_REST);
        pins.write(LAMP, false);
        assertThat(pins.readBack(LAMP)).isEqualTo(ReadBack.ENERGISED);
        lines.level.put("lamp", true);
        assertThat(pins.readBack(LAMP)).as("whatever was written").isEqualTo(ReadBack.AT_REST);
    }

    @Test
    void theRelaysContactIsSampledWithTheInputs() {
        final GpioPins pins = claim();
        assertThat(pins.isHoldUpSeenClosed()).isFalse();
        lines.level.put("hold-up-seen", true);
        pins.sample();
        assertThat(pins.isHoldUpSeenClosed()).isTrue();
        pins.writeHoldUp(true);
        assertThat(lines.told).endsWith("write hold-up high");
    }
}
