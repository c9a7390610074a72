package slackwater.controller.run;

/** A small set in the run; empty to begin with. */
public final class Bits {
    private final int index;

    Bits(final int index) {
        this.index = index;
    }

    public long of(final RunState run) {
        return run.cell(index);
    }

    public boolean isEmpty(final RunState run) {
        return run.cell(index) == 0;
    }

    public void set(final RunState run, final long members) {
        run.setCell(index, members);
    }
}
