package slackwater.controller.ledger;

import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Tally;

/** How long an output was on in the last hour, to five minutes: twelve parts, each used again an hour later. */
final class LastHour {
    private static final int PARTS = 12;
    private static final long PART_NS = 300_000_000_000L;

    private final Tally[] part = new Tally[PARTS];
    private final Tally[] onNs = new Tally[PARTS];

    LastHour(final String output, final Layout layout) {
        for (int i = 0; i < PARTS; i++) {
            part[i] = layout.tally("ledger." + output + ".hour-part." + i);
            onNs[i] = layout.tally("ledger." + output + ".hour-on." + i);
        }
    }

    /** Adds a time on that is over. */
    void add(final RunState run, final long fromNs, final long untilNs) {
        long atNs = Math.max(fromNs, firstNs(untilNs));
        while (atNs < untilNs) {
            final long partNumber = atNs / PART_NS;
            final long nextNs = Math.min(untilNs, (partNumber + 1) * PART_NS);
            final int at = (int) (partNumber % PARTS);
            if (part[at].of(run) != partNumber) {
                part[at].set(run, partNumber);
                onNs[at].set(run, 0);
            }
            onNs[at].add(run, nextNs - atNs);
            atNs = nextNs;
        }
    }

    /**
     * The share of the last hour, or of the time since the controller started, in which it was on.
     *
     * @param onSinceNs since when it is on; now where it is at rest
     */
    double share(final RunState run, final long onSinceNs, final long nowNs) {
        final long firstNs = firstNs(nowNs);
        long sumNs = nowNs - Math.max(firstNs, onSinceNs);
        for (int i = 0; i < PARTS; i++) {
            if (part[i].of(run) * PART_NS >= firstNs) {
                sumNs += onNs[i].of(run);
            }
        }
        return nowNs <= firstNs ? 0 : (double) sumNs / (nowNs - firstNs);
    }

    private static long firstNs(final long nowNs) {
        return Math.max(0, nowNs / PART_NS - PARTS + 1) * PART_NS;
    }
}
