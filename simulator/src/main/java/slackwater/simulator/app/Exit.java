package slackwater.simulator.app;

/** Exit codes of every command. */
final class Exit {
    static final int GOOD = 0;
    /** The rig or the run fell short. */
    static final int FELL_SHORT = 1;
    /** What was given is wrong. */
    static final int WRONG = 2;

    private Exit() {}
}
