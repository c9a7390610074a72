package slackwater.controller.pins;

/**
 * The port to one controller's lines. Inputs and outputs are counted in the order of the rig, those of this controller only.
 * Levels are electrical; polarity is the caller's business.
 */
public interface Pins {
    /** Samples every input line at once, and takes the edges that were latched since the last sample. */
    void sample();

    /** The level of an input at the last sample. */
    boolean isHigh(int input);

    /** Whether the line was at its other level at some moment between the last two samples. */
    boolean hadEdge(int input);

    /** Drives an output line. May block for long when the hardware is broken. */
    void write(int output, boolean isHigh);

    /** What is known of an output apart from the last write (S10). */
    ReadBack readBack(int output);

    /** Drives the line that pulses the hold-up relay. */
    void writeHoldUp(boolean isHigh);

    /** Whether the hold-up relay's auxiliary contact says closed; false where there is none. */
    boolean isHoldUpSeenClosed();

    /** What is known of an output, independent of the last write. */
    enum ReadBack {
        /** Nothing: an echo of the last write is nothing. */
        UNKNOWN,
        AT_REST,
        ENERGISED
    }
}
