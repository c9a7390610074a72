package slackwater.controller.run;

/** A deadline: the only way in which logic sees time. Not started to begin with, and then never due. */
public final class Timer {
    private final int index;

    Timer(final int index) {
        this.index = index;
    }

    /** Starts or restarts it; due once {@code lengthNs} has passed, in this very scan when that is 0. */
    public void start(final RunState run, final long lengthNs) {
        if (lengthNs < 0) {
            throw new IllegalArgumentException("lengthNs=" + lengthNs + " < 0");
        }
        final long dueNs = run.atNs() + lengthNs;
        run.setDue(index, dueNs < 0 ? RunState.NEVER - 1 : dueNs);
    }

    public void stop(final RunState run) {
        run.setDue(index, RunState.NEVER);
    }

    /** Whether it was started and its time has come. */
    public boolean isDue(final RunState run) {
        return run.due(index) <= run.atNs();
    }

    /** Whether it was started and its time has not come. */
    public boolean isRunning(final RunState run) {
        final long due = run.due(index);
        return due != RunState.NEVER && due > run.atNs();
    }

    /** Whether it was started at all. */
    public boolean isStarted(final RunState run) {
        return run.due(index) != RunState.NEVER;
    }

    /** Time left in nanoseconds, 0 when due, for words only. */
    public long leftNs(final RunState run) {
        return Math.max(0, run.due(index) - run.atNs());
    }
}
