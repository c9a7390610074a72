package slackwater.model.quantity;

/** What reading a text gave: a value, or the mistake in it. */
public sealed interface Parsed<T> {

    /** The text was right. */
    record Value<T>(T value) implements Parsed<T> {}

    /**
     * The text was wrong.
     *
     * @param offset where in the text, zero-based
     * @param length characters that are wrong, at least 1
     * @param words what is wrong
     * @param fix what to write instead
     */
    record Mistake<T>(int offset, int length, String words, String fix) implements Parsed<T> {

        /** The same mistake for a reader of something else, in a text of which this one is a part. */
        public <U> Mistake<U> within(final int partOffset) {
            return new Mistake<>(partOffset + offset, length, words, fix);
        }
    }
}
