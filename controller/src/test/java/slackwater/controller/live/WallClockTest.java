package slackwater.controller.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.controller.mode.Wall;

/** Time counts only once the system says that it is right (S5). */
final class WallClockTest {
    @TempDir
    private Path root;

    private final AtomicLong epochMs = new AtomicLong(1_700_000_000_123L);

    @Test
    void theMarkOfTheTimeServiceMakesItTrustedAndItStaysSo() throws IOException {
        final WallClock clock = new WallClock(epochMs::get, root);
        assertThat(clock.get()).isEqualTo(new Wall(1_700_000_000_100L, false));
        final Path mark = root.resolve("run/systemd/timesync/synchronized");
        Files.createDirectories(mark.getParent());
        Files.createFile(mark);
        assertThat(clock.get().isTrusted()).as("nobody has looked").isFalse();
        assertThat(clock.look()).isTrue();
        assertThat(clock.get()).isEqualTo(new Wall(1_700_000_000_100L, true));
        Files.delete(mark);
        assertThat(clock.look()).isTrue();
    }

    @Test
    void scansWithinATenthOfASecondShareOneValue() {
        final WallClock clock = new WallClock(epochMs::get, root);
        final Wall first = clock.get();
        epochMs.set(1_700_000_000_199L);
        assertThat(clock.get()).isSameAs(first);
        epochMs.set(1_700_000_000_200L);
        assertThat(clock.get().epochMs()).isEqualTo(1_700_000_000_200L);
    }
}
