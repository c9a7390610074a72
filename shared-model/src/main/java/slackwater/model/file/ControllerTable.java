package slackwater.model.file;

import java.time.Duration;
import java.util.Optional;
import slackwater.model.Controller;
import slackwater.model.HoldUp;
import slackwater.model.board.Board;
import slackwater.model.board.Boards;
import slackwater.model.finding.Findings.Words;

/** Reads {@code [controller.NAME]}. */
final class ControllerTable {
    private static final int WATCHDOG_MIN_S = 1;
    private static final int WATCHDOG_MAX_S = 15;

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
        final Optional<Duration> watchdog = watchdog(reader);
        reader.finish();
        return board.map(known -> new Controller(name, known, holdUp, watchdog));
    }

    /** What the boards' own watchdog can do: whole seconds, 1 to 15 (handbook 9.1). */
    private static Optional<Duration> watchdog(final TableReader reader) {
        final Optional<Duration> asked = reader.duration("watchdog");
        final boolean canBe = asked.isEmpty()
                || (asked.get().toNanosPart() == 0
                        && asked.get().toSeconds() >= WATCHDOG_MIN_S
                        && asked.get().toSeconds() <= WATCHDOG_MAX_S);
        if (!canBe) {
            reader.error(
                    "watchdog-time",
                    "watchdog",
                    new Words(
                            "the board's watchdog cannot be set to this time",
                            "it knows whole seconds only, and no more than " + WATCHDOG_MAX_S,
                            "write a time from \"" + WATCHDOG_MIN_S + " s\" to \"" + WATCHDOG_MAX_S + " s\""));
            return Optional.empty();
        }
        return asked;
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
