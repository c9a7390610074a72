package slackwater.controller.live;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import slackwater.controller.mode.Wall;

/**
 * Wall time for the scan, trusted only once the system says that its clock is synchronised (S5): the mark that
 * systemd-timesyncd leaves after its first synchronisation, or what {@code timedatectl} reads from the kernel, which any time
 * service sets. Without either, schedules wait. Trust, once won, stays: the clock then runs on by itself.
 */
public final class WallClock implements Supplier<Wall> {
    private static final String MARK = "run/systemd/timesync/synchronized";
    private static final String[] ASK = {"timedatectl", "show", "--property=NTPSynchronized", "--value"};
    /** A new value only so often: the scan should make no garbage, and a schedule knows minutes. */
    private static final long GRAIN_MS = 100;

    private final LongSupplier epochMs;
    private final Path root;
    private volatile boolean isTrusted;
    private Wall last = Wall.UNKNOWN;

    /**
     * @param epochMs milliseconds since 1970
     * @param root where the system's folders begin
     */
    public WallClock(final LongSupplier epochMs, final Path root) {
        this.epochMs = epochMs;
        this.root = root;
    }

    /** For the scan's thread alone. */
    @Override
    public Wall get() {
        final long now = epochMs.getAsLong() / GRAIN_MS * GRAIN_MS;
        if (now != last.epochMs() || isTrusted != last.isTrusted()) {
            last = new Wall(now, isTrusted);
        }
        return last;
    }

    /** Looks whether the system's clock is synchronised by now; slow, so never on the scan's thread. */
    public boolean look() {
        if (!isTrusted) {
            isTrusted = Files.exists(root.resolve(MARK)) || "yes".equals(asked());
        }
        return isTrusted;
    }

    private static String asked() {
        try {
            final ProcessBuilder builder = new ProcessBuilder(ASK).redirectError(ProcessBuilder.Redirect.DISCARD);
            builder.environment().remove("NOTIFY_SOCKET"); // it would tell the service manager of its own failures
            final Process tool = builder.start();
            tool.getOutputStream().close();
            if (!tool.waitFor(2, TimeUnit.SECONDS)) {
                tool.destroyForcibly();
                return "";
            }
            return new String(tool.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
        } catch (final IOException absent) {
            return "";
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}
