package slackwater.controller.live;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * Tells the service manager (handbook 9.3) through its own small tool, because Java 17 has no datagrams to local sockets. Its
 * watchdog is told only that proved scans went on since it was last told; a scan that hangs says nothing. Where no
 * service manager asked, nothing is done.
 */
public final class ServiceNotifier {
    private static final long NS_PER_US = 1_000L;
    private static final long TOOL_MS = 2_000;

    private final boolean isAsked;
    private final long everyNs;
    private final List<String> tool;
    private final LongSupplier beats;
    private long toldBeats = -1;
    private long toldNs;

    /**
     * @param environment this process's
     * @param pid this process's
     * @param tool the notifying program and its first arguments
     * @param beats counts proved scans
     */
    public ServiceNotifier(
            final Map<String, String> environment, final long pid, final List<String> tool, final LongSupplier beats) {
        isAsked = !environment.getOrDefault("NOTIFY_SOCKET", "").isEmpty();
        final String own = Long.toString(pid);
        final boolean isOurs = environment.getOrDefault("WATCHDOG_PID", own).equals(own);
        everyNs = isAsked && isOurs ? micros(environment.getOrDefault("WATCHDOG_USEC", "")) * NS_PER_US / 2 : 0;
        this.tool = List.copyOf(tool);
        this.beats = beats;
    }

    private static long micros(final String word) {
        try {
            return Long.parseLong(word);
        } catch (final NumberFormatException none) {
            return 0;
        }
    }

    /** Every line is claimed and the scan runs. Returns whether it was told, or nobody wants to know. */
    public boolean ready(final String status) {
        return tell("READY=1", "STATUS=" + status);
    }

    /** It is ending, with everything at rest. */
    public boolean stopping() {
        return tell("STOPPING=1");
    }

    /** Keeps the manager's watchdog alive when half its time has passed and proved scans went on; call it often. */
    public boolean look(final long nowNs) {
        if (everyNs == 0 || (toldBeats >= 0 && nowNs - toldNs < everyNs)) {
            return true;
        }
        final long now = beats.getAsLong();
        if (now == toldBeats) {
            return true;
        }
        toldBeats = now;
        toldNs = nowNs;
        return tell("WATCHDOG=1");
    }

    private boolean tell(final String... what) {
        if (!isAsked) {
            return true;
        }
        final List<String> command = new ArrayList<>(tool);
        command.addAll(List.of(what));
        try {
            final Process told = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!told.waitFor(TOOL_MS, TimeUnit.MILLISECONDS)) {
                told.destroyForcibly();
                return false;
            }
            return told.exitValue() == 0;
        } catch (final IOException absent) {
            return false;
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
