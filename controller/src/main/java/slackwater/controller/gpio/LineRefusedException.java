package slackwater.controller.gpio;

/** A line, or the whole computer, that cannot be used; its message is the one line that a person reads. */
public final class LineRefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public LineRefusedException(final String message) {
        super(message);
    }

    public LineRefusedException(final String message, final Throwable cause) {
        super(message, cause);
    }
}
