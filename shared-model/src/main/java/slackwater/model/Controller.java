package slackwater.model;

import java.time.Duration;
import java.util.Optional;
import slackwater.model.board.Board;

/**
 * A computer in the yard, with the outputs and inputs wired to it.
 *
 * @param watchdog the time-out asked of the board's own watchdog, whole seconds; empty where it is not used
 */
public record Controller(String name, Board board, Optional<HoldUp> holdUp, Optional<Duration> watchdog) {

    /** One whose board's watchdog is not used. */
    public Controller(final String name, final Board board, final Optional<HoldUp> holdUp) {
        this(name, board, holdUp, Optional.empty());
    }
}
