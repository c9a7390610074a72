package slackwater.controller.live;

import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** How late the scans began, counted in steps of 10 microseconds up to 200 ms; written and read by the scan's thread alone. */
public final class Lateness {
    private static final long STEP_NS = 10_000;
    private static final int STEPS = 20_000;
    private static final double PER_MILLE = 1_000.0;

    private final long[] counts = new long[STEPS + 1];
    private long total;
    private long maxNs;
    private long missed;

    /** Notes a scan that began so late. */
    public void note(final long lateNs) {
        counts[(int) Math.min(STEPS, Math.max(0, lateNs) / STEP_NS)]++;
        total++;
        maxNs = Math.max(maxNs, lateNs);
    }

    /** Notes scans that were never run. */
    public void miss(final long scans) {
        missed += scans;
    }

    /** The lateness that so many of a thousand scans did not exceed, in microseconds, to the step above. */
    public long microsAt(final double perMille) {
        final long wanted = (long) StrictMath.ceil(total * perMille / PER_MILLE);
        long seen = 0;
        for (int step = 0; step < STEPS; step++) {
            seen += counts[step];
            if (seen >= wanted) {
                return (step + 1) * STEP_NS / 1_000;
            }
        }
        return TimeUnit.NANOSECONDS.toMicros(maxNs);
    }

    public long scans() {
        return total;
    }

    public long missed() {
        return missed;
    }

    /** One line for a person. */
    public String text() {
        return String.format(
                Locale.ROOT,
                "%d scans, late by us: p50 %d, p99 %d, p99.9 %d, max %d; %d missed",
                total,
                microsAt(500),
                microsAt(990),
                microsAt(999),
                TimeUnit.NANOSECONDS.toMicros(maxNs),
                missed);
    }
}
