package slackwater.controller.command;

/**
 * Something that a person or a peer asks for and that may be refused.
 *
 * @param wants what
 * @param target a zone, or an output for a lockout's release or a weighing
 * @param who by whom, for the record
 * @param secret what proves it, for a lockout's release; otherwise empty
 * @param seen what the asker knew of the controller
 * @param usedKg for a weighing, what the output has used since it was last filled; otherwise 0
 */
public record Request(Wants wants, String target, String who, String secret, Seen seen, double usedKg) {
    private static final double G_PER_KG = 1e3;

    /** A request that weighs nothing. */
    public Request(final Wants wants, final String target, final String who, final String secret, final Seen seen) {
        this(wants, target, who, secret, seen, 0);
    }

    /** Tells by how much the bottle or tray of an output has become lighter since it was last filled. */
    public static Request weighing(final String output, final double usedKg, final String who, final Seen seen) {
        return new Request(Wants.WEIGH, output, who, "", seen, usedKg);
    }

    /** What can be asked for. Stop, stand-down and lockout are no requests: they are never refused (S3). */
    public enum Wants {
        ARM,
        /** Let heaters warm without arming. */
        WARM,
        BENCH,
        /** The person takes their own lock off a zone. */
        UNLOCK_ZONE,
        /** The person takes their own lock off an output. */
        UNLOCK_OUTPUT,
        /** The person has weighed what an output has used since it was last filled. */
        WEIGH
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
        final String weighed =
                wants == Wants.WEIGH ? String.format(java.util.Locale.ROOT, " %.1f g", usedKg * G_PER_KG) : "";
        return wants.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + " " + target + weighed + " by "
                + who;
    }
}
