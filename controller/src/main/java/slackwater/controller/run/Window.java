package slackwater.controller.run;

/** A sliding limit: at most so many in any span [t, t + within). One timer each, so that nothing else needs to see time. */
public final class Window {
    private final Timer[] timers;
    private final long withinNs;

    Window(final Timer[] timers, final long withinNs) {
        this.timers = timers;
        this.withinNs = withinNs;
    }

    /** How many more would be within the limit now. */
    public int room(final RunState run) {
        int free = 0;
        for (final Timer timer : timers) {
            if (!timer.isRunning(run)) {
                free++;
            }
        }
        return free;
    }

    /** Counts one that really happened; one beyond the limit is a programmer's mistake and throws. */
    public void count(final RunState run) {
        for (final Timer timer : timers) {
            if (!timer.isRunning(run)) {
                timer.start(run, withinNs);
                return;
            }
        }
        throw new IllegalStateException("no room: most=" + timers.length + " within " + withinNs + " ns");
    }

    /** Time until there is room for one, 0 when there is, for words only. */
    public long leftNs(final RunState run) {
        long least = Long.MAX_VALUE;
        for (final Timer timer : timers) {
            least = Math.min(least, timer.isRunning(run) ? timer.leftNs(run) : 0);
        }
        return least;
    }
}
