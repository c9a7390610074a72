package slackwater.controller.live;

import java.util.concurrent.locks.LockSupport;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import slackwater.controller.mode.Wall;
import slackwater.controller.scan.Scan;
import slackwater.controller.watchdog.SampleAge;

/**
 * The scan's thread: absolute deadlines on a grid of one period. A scan that comes too late is late, those missed are missed:
 * nothing is caught up (S9). Whatever ends it, everything rests before it ends.
 */
public final class ScanLoop implements Runnable {
    private final Scan scan;
    private final Age age;
    private final Supplier<Wall> wall;
    private final Lateness lateness = new Lateness();
    private final long periodNs;
    private volatile boolean isEnding;
    private volatile boolean hasEnded;
    private volatile String broken = "";

    /** How old the samples are: counted from before they were taken, so never too young. */
    public static final class Age implements SampleAge {
        private final LongSupplier clockNs;
        private long beganNs;

        public Age(final LongSupplier clockNs) {
            this.clockNs = clockNs;
        }

        void begin(final long nowNs) {
            beganNs = nowNs;
        }

        long nowNs() {
            return clockNs.getAsLong();
        }

        @Override
        public long ageNs() {
            return clockNs.getAsLong() - beganNs;
        }
    }

    public ScanLoop(final Scan scan, final Age age, final Supplier<Wall> wall) {
        this.scan = scan;
        this.age = age;
        this.wall = wall;
        periodNs = scan.plan().periodNs();
    }

    @Override
    public void run() {
        try {
            scanOnAndOn();
        } catch (final Throwable thrown) { // an Error too: outputs rest before anything is said
            broken = String.valueOf(thrown);
        } finally {
            rest();
            hasEnded = true;
        }
    }

    private void scanOnAndOn() {
        final long originNs = age.nowNs();
        long dueNs = originNs;
        while (!isEnding) {
            long nowNs = age.nowNs();
            if (nowNs < dueNs) {
                LockSupport.parkNanos(this, dueNs - nowNs);
                continue;
            }
            lateness.note(nowNs - dueNs);
            age.begin(nowNs);
            scan.once(nowNs - originNs, wall.get());
            nowNs = age.nowNs();
            dueNs += periodNs;
            if (nowNs >= dueNs) {
                final long gone = (nowNs - dueNs) / periodNs + 1;
                lateness.miss(gone);
                dueNs += gone * periodNs;
            }
        }
    }

    private void rest() {
        scan.gate().close();
        try {
            scan.gate().restAll();
        } catch (final RuntimeException dead) {
            broken = broken + " a line cannot be put to rest: " + dead.getMessage();
        }
    }

    /** Asks it to end after the scan that runs. */
    public void end() {
        isEnding = true;
    }

    /** Whether it has ended, with everything at rest. */
    public boolean hasEnded() {
        return hasEnded;
    }

    /** What ended it, or an empty text. */
    public String broken() {
        return broken;
    }

    /** How late its scans were; once it has ended. */
    public Lateness lateness() {
        return lateness;
    }
}
