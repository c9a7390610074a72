package slackwater.controller.watchdog;

/**
 * The ordered chain of step marks: complete only when every step ran, once and in order. What is fed on it cannot be fed by
 * habit (S2; logical monitoring of program sequence as in IEC 61508-2, Table A.10, handbook 6.8).
 */
public final class ProofOfScan {
    private static final Step[] STEPS = Step.values();

    private int reached;
    private boolean isBroken;

    /** Begins a scan with nothing proved. */
    public void begin() {
        reached = 0;
        isBroken = false;
    }

    /** Marks a step as done; one out of order spoils the whole scan. */
    public void mark(final Step step) {
        if (reached < STEPS.length && STEPS[reached] == step) {
            reached++;
        } else {
            isBroken = true;
        }
    }

    public boolean isComplete() {
        return !isBroken && reached == STEPS.length;
    }
}
