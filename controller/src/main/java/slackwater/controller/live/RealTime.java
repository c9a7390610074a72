package slackwater.controller.live;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Raises one thread of this process to real-time priority, where the service allows it, through {@code chrt}. */
public final class RealTime {
    private static final Path TASKS = Path.of("/proc/self/task");

    private RealTime() {}

    /** Raises the thread of that name. Returns why it could not be done. */
    public static Optional<String> raise(final String thread, final int priority) {
        try {
            final Optional<String> id = idOf(thread);
            if (id.isEmpty()) {
                return Optional.of("no thread is called " + thread);
            }
            final Process tool = new ProcessBuilder("chrt", "--fifo", "--pid", Integer.toString(priority), id.get())
                    .redirectErrorStream(true)
                    .start();
            final String said = new String(tool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return tool.waitFor(2, TimeUnit.SECONDS) && tool.exitValue() == 0
                    ? Optional.empty()
                    : Optional.of(said.lines().findFirst().orElse("chrt does not answer"));
        } catch (final IOException absent) {
            return Optional.of(String.valueOf(absent.getMessage()));
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Optional.of("interrupted");
        }
    }

    private static Optional<String> idOf(final String thread) throws IOException {
        try (DirectoryStream<Path> tasks = Files.newDirectoryStream(TASKS)) {
            for (final Path task : tasks) {
                if (Files.readString(task.resolve("comm"), StandardCharsets.UTF_8)
                        .strip()
                        .equals(thread)) {
                    return Optional.of(String.valueOf(task.getFileName()));
                }
            }
        }
        return Optional.empty();
    }
}
