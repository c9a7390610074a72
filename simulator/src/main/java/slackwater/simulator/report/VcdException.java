package slackwater.simulator.report;

/** A recorded waveform that cannot be used; the message is one line: file, line, what is wrong, what to do. */
public final class VcdException extends Exception {
    private static final long serialVersionUID = 1L;

    VcdException(final String message) {
        super(message);
    }
}
