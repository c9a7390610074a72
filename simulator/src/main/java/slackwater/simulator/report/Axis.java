package slackwater.simulator.report;

/**
 * A stretch of a run laid onto the picture's width.
 *
 * @param fromNs moment at the left edge
 * @param untilNs moment at the right edge
 * @param leftPx where the left edge is
 * @param widthPx how wide the stretch is
 */
record Axis(long fromNs, long untilNs, int leftPx, int widthPx) {
    private static final long NS_PER_S = 1_000_000_000L;
    private static final int TICK_APART_PX = 92;
    private static final int[] STEPS_S = {1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400, 28_800
    };

    Axis {
        if (untilNs <= fromNs) {
            throw new IllegalArgumentException("untilNs=" + untilNs + " <= fromNs=" + fromNs);
        }
    }

    /** Where a moment is drawn; moments outside fall onto the edges. */
    double px(final long atNs) {
        final long inside = Math.max(fromNs, Math.min(untilNs, atNs));
        return leftPx + widthPx * ((inside - fromNs) / (double) (untilNs - fromNs));
    }

    boolean holds(final long atNs) {
        return atNs >= fromNs && atNs <= untilNs;
    }

    int rightPx() {
        return leftPx + widthPx;
    }

    /** A round step of time whose labels do not touch. */
    long stepNs() {
        for (final int stepS : STEPS_S) {
            if (widthPx * (stepS * NS_PER_S / (double) (untilNs - fromNs)) >= TICK_APART_PX) {
                return stepS * NS_PER_S;
            }
        }
        final long days = (untilNs - fromNs) / (86_400L * NS_PER_S);
        return (days / 10 + 1) * 86_400L * NS_PER_S;
    }

    /** The first tick, at a round clock time. */
    long firstTickNs(final StartedAt startedAt) {
        final long stepNs = stepNs();
        final long pastNs = Math.floorMod(startedAt.sinceMidnightNs() + fromNs, stepNs);
        return pastNs == 0 ? fromNs : fromNs + stepNs - pastNs;
    }
}
