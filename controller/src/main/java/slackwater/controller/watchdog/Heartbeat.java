package slackwater.controller.watchdog;

import java.util.concurrent.atomic.AtomicLong;

/** Counts proved scans; the scan thread writes, the supervisor reads. */
public final class Heartbeat {
    private final AtomicLong beats = new AtomicLong();

    void beat() {
        beats.lazySet(beats.get() + 1);
    }

    /** Proved scans so far. */
    public long beats() {
        return beats.get();
    }
}
