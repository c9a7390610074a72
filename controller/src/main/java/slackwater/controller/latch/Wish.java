package slackwater.controller.latch;

/** What somebody wants of a zone; whether it may is another matter. */
public enum Wish {
    RESTING,
    /** Stepping by hand. */
    BENCH,
    /** About to be armed: light and sound warn first. */
    WARNING,
    ARMED
}
