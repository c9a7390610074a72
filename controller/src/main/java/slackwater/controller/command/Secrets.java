package slackwater.controller.command;

/** Knows who may take a lock off (S5). */
public interface Secrets {
    /** Whether the secret is this person's own. */
    boolean isOwn(String person, String secret);

    /** Whether the secret is that of the key override, for a lost phone. */
    boolean isOverride(String secret);
}
