package slackwater.simulator.app;

import java.io.PrintWriter;
import slackwater.simulator.evening.EveningRun;

/** Says in lines how far a long evening has come; says nothing of a quick one. */
final class ProgressLine implements EveningRun.Progress {
    private static final long QUICK_NS = 3_000_000_000L;
    private static final int STEP_PERCENT = 20;

    private final PrintWriter err;
    private final long beganNs = System.nanoTime();
    private long toldPercent;

    ProgressLine(final PrintWriter err) {
        this.err = err;
    }

    @Override
    public void reached(final double share) {
        final long percent = Math.round(share * 100);
        if (System.nanoTime() - beganNs >= QUICK_NS && percent >= toldPercent + STEP_PERCENT) {
            toldPercent = percent;
            err.println("simulating: " + percent + " %");
            err.flush();
        }
    }
}
