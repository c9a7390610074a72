package slackwater.simulator.yard;

/** A fault laid over the line of an input. What is true behind it goes on unchanged, so that runs can be compared. */
public sealed interface InputOverlay {
    /** The line is held high. */
    record StuckHigh() implements InputOverlay {}

    /** The line is held low. */
    record StuckLow() implements InputOverlay {}

    /** The wire is off: the pin's own pull decides, and without one it is taken to read low. */
    record Open() implements InputOverlay {}

    /**
     * The line goes up and down by itself.
     *
     * @param periodNs one high and one low together; each half is rounded up to the yard's grid of 10 ms
     */
    record Chatter(long periodNs) implements InputOverlay {
        public Chatter {
            if (periodNs <= 0) {
                throw new IllegalArgumentException("periodNs=" + periodNs + " must be above 0");
            }
        }
    }
}
