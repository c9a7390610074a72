package slackwater.model;

/** What an output's surroundings allow, most restrictive first. Computed from latches and wishes, never stored (S4). */
public enum Mode {
    /** The stop loop has opened, or somebody sent stop. */
    STOPPED,
    /** A fault of the output, its zone or its controller is latched. */
    FAULTED,
    /** Somebody works there. */
    LOCKED_OUT,
    /** Stepping by hand, with air and mains off. */
    BENCH,
    /** The rig's light and sound announce that it is about to move. */
    WARNING,
    /** Visitors are greeted. */
    ARMED,
    /** Nothing is wanted. */
    RESTING
}
