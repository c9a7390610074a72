package slackwater.controller.run;

/** When something last happened. */
public final class Since {
    private final int index;

    Since(final int index) {
        this.index = index;
    }

    public void mark(final RunState run) {
        run.setTally(index, run.atNs());
    }

    /** Marks a moment other than now, for scans that were passed over. */
    public void markAt(final RunState run, final long atNs) {
        run.setTally(index, atNs);
    }

    public long atNs(final RunState run) {
        return run.tally(index);
    }
}
