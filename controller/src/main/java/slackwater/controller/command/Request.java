package slackwater.controller.command;

/**
 * Something that a person or a peer asks for and that may be refused.
 *
 * @param wants what
 * @param target a zone, or an output for a lockout's release
 * @param who by whom, for the record
 * @param secret what proves it, for a lockout's release; otherwise empty
 * @param seen what the asker knew of the controller
 */
public record Request(Wants wants, String target, String who, String secret, Seen seen) {

    /** What can be asked for. Stop, stand-down and lockout are no requests: they are never refused (S3). */
    public enum Wants {
        ARM,
        /** Let heaters warm without arming. */
        WARM,
        BENCH,
        /** The person takes their own lock off a zone. */
        UNLOCK_ZONE,
        /** The person takes their own lock off an output. */
        UNLOCK_OUTPUT
    }

    /**
     * What the asker knew: a request that quotes another boot or an older latch generation is refused (S3).
     *
     * @param bootId of the controller
     * @param generation of its latches
     */
    public record Seen(long bootId, long generation) {}

    /** The request in words, for the record. */
    public String text() {
        return wants.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + " " + target + " by " + who;
    }
}
