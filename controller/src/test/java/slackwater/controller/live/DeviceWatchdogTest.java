package slackwater.controller.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The board's watchdog on files that stand for it (handbook 9.1). */
final class DeviceWatchdogTest {
    private static final Duration TEN = Duration.ofSeconds(10);
    private static final long PERIOD_NS = 10_000_000L;

    @TempDir
    private Path root;

    @BeforeEach
    void aWatchdog() throws IOException {
        Files.createDirectories(root.resolve("dev"));
        Files.createFile(root.resolve("dev/watchdog0"));
        fact("timeout", "10");
        fact("nowayout", "0");
    }

    private void fact(final String name, final String value) throws IOException {
        final Path facts = Files.createDirectories(root.resolve("sys/class/watchdog/watchdog0"));
        Files.writeString(facts.resolve(name), value + "\n");
    }

    private byte[] written() throws IOException {
        return Files.readAllBytes(root.resolve("dev/watchdog0"));
    }

    @Test
    void itIsFedOnceASecondOfScansAndNeverWithTheLetterThatDisarms() throws IOException {
        final DeviceWatchdog watchdog = DeviceWatchdog.open(root, TEN, PERIOD_NS);
        watchdog.feed();
        assertThat(written()).containsExactly(0);
        for (int scan = 1; scan < 100; scan++) {
            watchdog.feed();
        }
        assertThat(written()).containsExactly(0);
        watchdog.feed();
        assertThat(written()).containsExactly(0, 0);
        watchdog.close();
        assertThat(written()).as("closed without the letter it runs on").containsExactly(0, 0);
    }

    @Test
    void aShortTimeoutIsFedFourTimesWithinIt() throws IOException {
        fact("timeout", "1");
        final DeviceWatchdog watchdog = DeviceWatchdog.open(root, Duration.ofSeconds(1), PERIOD_NS);
        for (int scan = 0; scan < 100; scan++) {
            watchdog.feed();
        }
        assertThat(written()).hasSize(4);
    }

    @Test
    void onlyACleanStopDisarmsIt() throws IOException {
        final DeviceWatchdog watchdog = DeviceWatchdog.open(root, TEN, PERIOD_NS);
        watchdog.feed();
        assertThat(watchdog.disarm()).isTrue();
        assertThat(written()).containsExactly(0, 'V');
    }

    @Test
    void oneThatCannotBeStoppedSaysSo() throws IOException {
        fact("nowayout", "1");
        assertThat(DeviceWatchdog.open(root, TEN, PERIOD_NS).disarm()).isFalse();
    }

    @Test
    void noneAlthoughTheRigAsksForOneIsRefused() throws IOException {
        Files.delete(root.resolve("dev/watchdog0"));
        assertThatThrownBy(() -> DeviceWatchdog.open(root, TEN, PERIOD_NS))
                .isInstanceOf(DeviceWatchdog.UnusableException.class)
                .hasMessage("the rig asks for a watchdog of 10 s, and this computer has no /dev/watchdog0:"
                        + " switch its driver on, or take watchdog out of the rig");
    }

    @Test
    void anotherTimeoutInForceIsRefused() throws IOException {
        fact("timeout", "15");
        assertThatThrownBy(() -> DeviceWatchdog.open(root, TEN, PERIOD_NS))
                .hasMessage("the rig asks for a watchdog of 10 s, and /dev/watchdog0 is set to 15 s:"
                        + " as root, wdctl --settimeout 10 /dev/watchdog0");
    }

    @Test
    void oneThatCannotBeOpenedIsRefusedInOneLine() throws IOException {
        Files.delete(root.resolve("dev/watchdog0"));
        Files.createDirectory(root.resolve("dev/watchdog0"));
        assertThatThrownBy(() -> DeviceWatchdog.open(root, TEN, PERIOD_NS))
                .isInstanceOf(DeviceWatchdog.UnusableException.class)
                .hasMessageStartingWith("/dev/watchdog0 cannot be opened (");
    }

    @Test
    void oneThatCannotBeFedIsToldAndThrowsNothingIntoTheScan() {
        final DeviceWatchdog watchdog = DeviceWatchdog.open(root, TEN, PERIOD_NS);
        assertThat(watchdog.trouble()).isEmpty();
        watchdog.close();
        watchdog.feed();
        assertThat(watchdog.trouble())
                .hasValueSatisfying(line -> assertThat(line).endsWith("the board will reset"));
    }
}
