package slackwater.simulator.referee;

import java.util.Arrays;

/** For each output, the last moment at which it may still be energised. Being at rest at that moment is in time. */
final class Dues {
    static final long NEVER = Long.MAX_VALUE;

    private final long[] lastNs;
    private int pending;

    Dues(final int outputs) {
        lastNs = new long[outputs];
        Arrays.fill(lastNs, NEVER);
    }

    private Dues(final Dues other) {
        lastNs = other.lastNs.clone();
        pending = other.pending;
    }

    /** Sets a deadline; one that is already set stays, for it is the earlier one. */
    void set(final int output, final long atNs) {
        if (lastNs[output] == NEVER) {
            lastNs[output] = atNs;
            pending++;
        }
    }

    void clear(final int output) {
        if (lastNs[output] != NEVER) {
            lastNs[output] = NEVER;
            pending--;
        }
    }

    boolean isAnyPending() {
        return pending > 0;
    }

    /** Whether the deadline lies before a moment until which the output was still energised. */
    boolean isOver(final int output, final long untilNs) {
        return lastNs[output] < untilNs;
    }

    /** The first moment at which an output would be late, or {@link #NEVER}. */
    long wakeNs() {
        if (pending == 0) {
            return NEVER;
        }
        long first = NEVER;
        for (final long at : lastNs) {
            first = Math.min(first, at);
        }
        return first + 1;
    }

    /** The first moment at which this output is late. */
    long lateNs(final int output) {
        return lastNs[output] + 1;
    }

    Dues copy() {
        return new Dues(this);
    }
}
