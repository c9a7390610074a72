package slackwater.controller.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the service manager is told, by a tool that writes it down (handbook 9.3). */
final class ServiceNotifierTest {
    private static final long PID = 77;
    private static final long S = 1_000_000_000L;

    @TempDir
    private Path folder;

    private final AtomicLong beats = new AtomicLong();
    private final Map<String, String> environment =
            new TreeMap<>(Map.of("NOTIFY_SOCKET", "/run/systemd/notify", "WATCHDOG_USEC", "10000000"));

    private ServiceNotifier notifier() throws IOException {
        final Path tool =
                Files.writeString(folder.resolve("tool"), "#!/bin/sh\necho \"$@\" >>" + folder.resolve("told") + "\n");
        return new ServiceNotifier(environment, PID, List.of("sh", tool.toString()), beats::get);
    }

    private List<String> told() throws IOException {
        final Path told = folder.resolve("told");
        return Files.exists(told) ? Files.readAllLines(told) : List.of();
    }

    @Test
    void readinessAndTheEndAreTold() throws IOException {
        final ServiceNotifier notifier = notifier();
        assertThat(notifier.ready("north runs")).isTrue();
        assertThat(notifier.stopping()).isTrue();
        assertThat(told()).containsExactly("READY=1 STATUS=north runs", "STOPPING=1");
    }

    @Test
    void itsWatchdogIsKeptAliveAtHalfItsTimeWhileScansGoOn() throws IOException {
        final ServiceNotifier notifier = notifier();
        notifier.look(0);
        assertThat(told()).containsExactly("WATCHDOG=1");
        beats.set(500);
        notifier.look(5 * S - 1);
        assertThat(told()).hasSize(1);
        notifier.look(5 * S);
        assertThat(told()).hasSize(2);
    }

    @Test
    void aScanThatHangsIsNotKeptAlive() throws IOException {
        final ServiceNotifier notifier = notifier();
        beats.set(9);
        notifier.look(0);
        for (long now = S; now < 60 * S; now += S) {
            notifier.look(now);
        }
        assertThat(told()).hasSize(1);
        beats.set(10);
        notifier.look(60 * S);
        assertThat(told()).hasSize(2);
    }

    @Test
    void anotherProcesssWatchdogIsNotKeptAlive() throws IOException {
        environment.put("WATCHDOG_PID", "78");
        final ServiceNotifier notifier = notifier();
        notifier.look(0);
        assertThat(told()).isEmpty();
    }

    @Test
    void withoutAServiceManagerNothingIsRun() throws IOException {
        environment.remove("NOTIFY_SOCKET");
        final ServiceNotifier notifier = notifier();
        assertThat(notifier.ready("north runs")).isTrue();
        notifier.look(0);
        assertThat(notifier.stopping()).isTrue();
        assertThat(told()).isEmpty();
    }

    @Test
    void aToolThatIsMissingOrFailsIsTold() {
        assertThat(new ServiceNotifier(environment, PID, List.of("no-such-tool-here"), beats::get).ready("x"))
                .isFalse();
        assertThat(new ServiceNotifier(environment, PID, List.of("false"), beats::get).ready("x"))
                .isFalse();
    }
}
