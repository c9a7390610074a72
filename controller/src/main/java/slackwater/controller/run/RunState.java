package slackwater.controller.run;

import java.util.Arrays;

/**
 * Everything that the logic of one controller remembers. Immutable logic objects hold typed handles into it, so that a run
 * can be copied, compared and hashed. Times count from the run's start, in nanoseconds, and never wrap.
 */
public final class RunState {
    /** The deadline of a timer that is not started. */
    static final long NEVER = Long.MAX_VALUE;

    private static final long FNV_BASIS = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;

    private final long[] dueNs;
    private final long[] cell;
    private final long[] tally;
    private long nowNs;
    private boolean hasChanged;

    RunState(final int timerCount, final long[] cells, final int tallyCount) {
        dueNs = new long[timerCount];
        Arrays.fill(dueNs, NEVER);
        cell = cells;
        tally = new long[tallyCount];
    }

    private RunState(final RunState other) {
        dueNs = other.dueNs.clone();
        cell = other.cell.clone();
        tally = other.tally.clone();
        nowNs = other.nowNs;
        hasChanged = other.hasChanged;
    }

    /** A run that goes on from here by itself. */
    public RunState copy() {
        return new RunState(this);
    }

    /** Begins a scan: time moves on, nothing has changed yet. */
    public void begin(final long atNs) {
        if (atNs < nowNs) {
            throw new IllegalArgumentException("time goes back: nowNs=" + atNs + " < " + nowNs);
        }
        nowNs = atNs;
        hasChanged = false;
    }

    /** The moment of this scan, for records; logic sees time only through timers. */
    public long atNs() {
        return nowNs;
    }

    /** Whether this scan has changed anything that a later scan could see. */
    public boolean hasChanged() {
        return hasChanged;
    }

    /** The next moment at which a scan could differ, if no input and no command comes before it. */
    public long wakeNs() {
        if (hasChanged) {
            return nowNs;
        }
        long next = NEVER;
        for (final long due : dueNs) {
            if (due > nowNs && due < next) {
                next = due;
            }
        }
        return next;
    }

    /** A hash of everything that decides the future, the same for runs that differ only in when they began. */
    public long fingerprint() {
        long hash = FNV_BASIS;
        for (final long due : dueNs) {
            final long left = due == NEVER ? NEVER : Math.max(0, due - nowNs);
            hash = (hash ^ left) * FNV_PRIME;
        }
        for (final long value : cell) {
            hash = (hash ^ value) * FNV_PRIME;
        }
        return hash;
    }

    /** Whether another run has the very same cells and deadlines. */
    public boolean isSameAs(final RunState other) {
        return Arrays.equals(cell, other.cell) && Arrays.equals(dueNs, other.dueNs);
    }

    long cell(final int index) {
        return cell[index];
    }

    void setCell(final int index, final long value) {
        if (cell[index] != value) {
            cell[index] = value;
            hasChanged = true;
        }
    }

    long due(final int index) {
        return dueNs[index];
    }

    void setDue(final int index, final long atNs) {
        if (dueNs[index] != atNs) {
            dueNs[index] = atNs;
            hasChanged = true;
        }
    }

    long tally(final int index) {
        return tally[index];
    }

    void setTally(final int index, final long value) {
        tally[index] = value;
    }
}
