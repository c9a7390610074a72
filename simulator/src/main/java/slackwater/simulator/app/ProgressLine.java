package slackwater.simulator.app;

import java.io.PrintWriter;
import slackwater.simulator.evening.EveningRun;

/** One line on a terminal that says how far an evening has come; nothing where nobody watches, or where it is quick. */
final class ProgressLine implements EveningRun.Progress {
    private static final long QUICK_NS = 1_500_000_000L;

    private final PrintWriter err;
    private final boolean isWatched = System.console() != null;
    private final long beganNs = System.nanoTime();
    private boolean isShown;

    ProgressLine(final PrintWriter err) {
        this.err = err;
    }

    @Override
    public void reached(final double share) {
        if (!isWatched || (!isShown && System.nanoTime() - beganNs < QUICK_NS)) {
            return;
        }
        isShown = true;
        err.print("\rsimulating: " + Math.round(share * 100) + " %" + (share >= 1 ? "\r                    \r" : ""));
        err.flush();
    }
}
