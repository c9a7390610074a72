package slackwater.model;

/** Which contact of the relay or valve the load uses, and so what the load does while the output is at rest. */
public enum Contact {
    /** The load is off at rest. */
    NORMALLY_OPEN,
    /** The load is on at rest: the only way to a "rest on" (S15). */
    NORMALLY_CLOSED
}
