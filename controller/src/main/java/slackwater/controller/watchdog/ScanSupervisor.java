package slackwater.controller.watchdog;

import slackwater.controller.pins.Gate;

/**
 * Looks from a second thread whether proved scans go on (S8). When they do not, it closes the gate for good, has rest
 * written by a helper that may hang, and halts the process within a bound. It feeds nothing.
 */
public final class ScanSupervisor {
    private final Heartbeat heartbeat;
    private final Gate gate;
    private final Halt halt;
    private final long patienceNs;
    private final long writeBoundMs;
    private long seenBeats = -1;
    private long seenAtNs;
    private boolean hasActed;
    private volatile boolean isRestWhole = true;

    /** Ends the process without running anything more of it. */
    public interface Halt {
        void halt(String why);
    }

    /**
     * How long the supervisor waits.
     *
     * @param patienceNs without a proved scan it acts after this
     * @param writeBoundMs rest writes that hang are given up after this
     */
    public record Bounds(long patienceNs, long writeBoundMs) {}

    public ScanSupervisor(final Heartbeat heartbeat, final Gate gate, final Halt halt, final Bounds bounds) {
        this.heartbeat = heartbeat;
        this.gate = gate;
        this.halt = halt;
        patienceNs = bounds.patienceNs();
        writeBoundMs = bounds.writeBoundMs();
    }

    /**
     * Looks once; call it from a thread of its own, several times within the patience.
     *
     * @param nowNs monotonic time with any origin
     * @return whether it has acted
     */
    public boolean look(final long nowNs) {
        final long beats = heartbeat.beats();
        if (beats != seenBeats) {
            seenBeats = beats;
            seenAtNs = nowNs;
        } else if (!hasActed && nowNs - seenAtNs >= patienceNs) {
            act();
        }
        return hasActed;
    }

    private void act() {
        hasActed = true;
        gate.close();
        final Thread writer = new Thread(this::writeRest, "rest-writer");
        writer.setDaemon(true);
        writer.start();
        try {
            writer.join(writeBoundMs);
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        halt.halt("no proved scan for " + patienceNs + " ns"
                + (isRestWhole ? "" : "; at least one line could not be put to rest"));
    }

    private void writeRest() {
        try {
            gate.restAll();
        } catch (final RuntimeException broken) {
            // a line that cannot be written has been passed over for the others, and the process ends in any case
            isRestWhole = false;
        }
    }
}
