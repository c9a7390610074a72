package slackwater.controller.run;

/** A bounded number in the run; 0 to begin with. */
public final class Count implements Amount {
    private final int index;
    private final long most;

    Count(final int index, final long most) {
        this.index = index;
        this.most = most;
    }

    @Override
    public long of(final RunState run) {
        return run.cell(index);
    }

    @Override
    public void set(final RunState run, final long value) {
        if (value < 0 || value > most) {
            throw new IllegalArgumentException("count=" + value + " is not in 0.." + most);
        }
        run.setCell(index, value);
    }
}
