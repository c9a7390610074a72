package slackwater.controller.run;

/** A number that decides nothing: copied with the run, but no part of what is compared and hashed; 0 to begin with. */
public final class Tally implements Amount {
    private final int index;

    Tally(final int index) {
        this.index = index;
    }

    @Override
    public long of(final RunState run) {
        return run.tally(index);
    }

    @Override
    public void set(final RunState run, final long value) {
        run.setTally(index, value);
    }

    public void add(final RunState run, final long more) {
        run.setTally(index, run.tally(index) + more);
    }
}
