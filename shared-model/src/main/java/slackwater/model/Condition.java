package slackwater.model;

/**
 * What an input must be proven to be. Written {@code "name"} for active, {@code "not name"} for inactive.
 */
public record Condition(String input, boolean isActive) {
    @Override
    public String toString() {
        return isActive ? input : "not " + input;
    }
}
