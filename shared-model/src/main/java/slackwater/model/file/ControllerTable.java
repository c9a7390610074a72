package slackwater.model.file;

import java.time.Duration;
import java.util.Optional;
import slackwater.model.Controller;
import slackwater.model.HoldUp;
import slackwater.model.board.Board;
import slackwater.model.board.Boards;

/** Reads {@code [controller.NAME]}. */
final class ControllerTable {
    private ControllerTable() {}

    static Optional<Controller> read(final String name, final TableReader reader) {
        final String word = reader.required(
                "board",
                "the board decides which pins there are and what they do before the program runs",
                Context.listed("add board = one of: ", Boards.words(), ""));
        final Optional<Board> board = Boards.named(word);
        if (board.isEmpty() && !word.isEmpty()) {
            reader.unknownWord("board", word, Boards.words());
        }
        final Optional<HoldUp> holdUp = reader.table("hold-up").map(ControllerTable::holdUp);
        reader.finish();
        return board.map(known -> new Controller(name, known, holdUp));
    }

    private static HoldUp holdUp(final TableReader reader) {
        reader.require(
                "drop-out",
                "a pause longer than the relay's shortest drop-out latches a fault",
                "add drop-out = \"400 ms\", from the relay's data sheet");
        final HoldUp holdUp = new HoldUp(
                Items.pin(reader, "pin"),
                reader.duration("drop-out").orElse(Duration.ZERO),
                Items.pin(reader, "seen-pin"));
        reader.finish();
        return holdUp;
    }
}
