package slackwater.model;

/** An electrical level. Logic never sees one: it speaks of active and energised. */
public enum Level {
    LOW,
    HIGH;

    public Level opposite() {
        return this == LOW ? HIGH : LOW;
    }

    public boolean isHigh() {
        return this == HIGH;
    }

    public static Level ofHigh(final boolean isHigh) {
        return isHigh ? HIGH : LOW;
    }
}
