package slackwater.controller.run;

/** A yes or no in the run; no to begin with. */
public final class Flag {
    private final int index;

    Flag(final int index) {
        this.index = index;
    }

    public boolean is(final RunState run) {
        return run.cell(index) != 0;
    }

    public void set(final RunState run, final boolean value) {
        run.setCell(index, value ? 1 : 0);
    }
}
