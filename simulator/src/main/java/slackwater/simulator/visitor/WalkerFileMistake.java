package slackwater.simulator.visitor;

import java.io.IOException;

/** A file of measured positions that cannot be used; the message is one line for the person who named the file. */
public final class WalkerFileMistake extends IOException {
    private static final long serialVersionUID = 1L;

    public WalkerFileMistake(final String message) {
        super(message);
    }
}
