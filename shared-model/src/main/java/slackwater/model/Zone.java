package slackwater.model;

/**
 * A part of the yard that is armed, locked out and faulted together.
 *
 * @param whenAlone what it does when its network is gone (S24)
 * @param hasHardWiredStop whether a hard-wired stop covers it; needed to go on alone
 */
public record Zone(String name, WhenAlone whenAlone, boolean hasHardWiredStop) {

    /** What a zone does without its network. */
    public enum WhenAlone {
        REST,
        GO_ON
    }
}
