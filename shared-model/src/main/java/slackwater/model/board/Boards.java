package slackwater.model.board;

import java.util.List;
import java.util.Optional;

/** The boards that a rig file may name. */
public final class Boards {
    private static final List<Board> ALL = List.of(RaspberryPi.values());

    private Boards() {}

    public static List<Board> all() {
        return ALL;
    }

    /** The words that a rig file may use after {@code board =}. */
    public static List<String> words() {
        return ALL.stream().map(Board::word).toList();
    }

    /** The board that a rig file calls so. */
    public static Optional<Board> named(final String word) {
        return ALL.stream().filter(board -> board.word().equals(word)).findFirst();
    }
}
