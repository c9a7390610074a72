package slackwater.controller.mode;

/**
 * Wall time as an input of the scan.
 *
 * @param epochMs milliseconds since 1970 UTC
 * @param isTrusted whether it is known to be right; a controller has no battery clock
 */
public record Wall(long epochMs, boolean isTrusted) {
    /** No time yet. */
    public static final Wall UNKNOWN = new Wall(0, false);
}
