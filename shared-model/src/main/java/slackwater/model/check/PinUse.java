package slackwater.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Controller;
import slackwater.model.Input;
import slackwater.model.Level;
import slackwater.model.Output;
import slackwater.model.Pull;
import slackwater.model.Rig;
import slackwater.model.board.Board;
import slackwater.model.board.BootState;

/**
 * A GPIO of a controller and what it is wired to.
 *
 * @param gpio empty while it is not wired
 * @param who what it is wired to, as a finding says it
 * @param table where it is written, and under which key
 * @param drives the level that energises what it drives; empty for a pin that only senses
 * @param isPulledUpAtRest whether a sensing pin works with a pull-up: high at rest, active when low
 */
record PinUse(
        OptionalInt gpio, String who, String table, String key, Optional<Level> drives, boolean isPulledUpAtRest) {

    /** Handbook 3.11: 1.8 kOhm on the board itself, which a switch to ground overcomes and a pull-down does not. */
    private static final List<Integer> FIXED_PULL_UPS = List.of(2, 3);

    /** Everything that is wired, or will be, to one controller: hold-up, inputs, outputs, in the order of the file. */
    static List<PinUse> on(final Rig rig, final Controller controller) {
        final List<PinUse> uses = new ArrayList<>();
        final String table = "controller." + controller.name();
        controller.holdUp().ifPresent(holdUp -> {
            uses.add(new PinUse(
                    holdUp.pin(), "the hold-up relay", table, "hold-up.pin", Optional.of(Level.HIGH), false));
            holdUp.seenPin()
                    .ifPresent(gpio -> uses.add(new PinUse(
                            OptionalInt.of(gpio),
                            "the hold-up relay's contact",
                            table,
                            "hold-up.seen-pin",
                            Optional.empty(),
                            false)));
        });
        rig.inputsOf(controller.name()).forEach(input -> uses.add(of(input, controller.name())));
        rig.outputsOf(controller.name()).forEach(output -> uses.add(of(output)));
        return uses;
    }

    private static PinUse of(final Input input, final String controller) {
        return new PinUse(
                input.pinOn(controller),
                Say.quoted(input.name()),
                Say.table(input),
                input.controllers().size() > 1 ? "pins." + controller : "pin",
                Optional.empty(),
                input.activeLevel() == Level.LOW && input.pull() == Pull.UP);
    }

    private static PinUse of(final Output output) {
        return new PinUse(
                output.pin(),
                Say.quoted(output.name()),
                Say.table(output),
                "pin",
                Optional.of(output.energisedLevel()),
                false);
    }

    boolean isOutput() {
        return drives.isPresent();
    }

    /** What to write instead: the pins of that controller that are still free and suit this use. */
    String fix(final Rig rig, final Controller controller) {
        final List<Integer> taken = on(rig, controller).stream()
                .flatMapToInt(use -> use.gpio().stream())
                .boxed()
                .toList();
        final List<Integer> free = controller.board().header().stream()
                .filter(candidate -> !taken.contains(candidate) && suits(controller.board(), candidate))
                .toList();
        if (free.isEmpty()) {
            return "no free pin of " + Say.quoted(controller.name())
                    + " suits it: move something to another controller";
        }
        final String what =
                drives.map(level -> "that rest while the board boots: ").orElse("that can sense it: ");
        return "free pins of " + Say.quoted(controller.name()) + " " + what + Say.numbers(free);
    }

    private boolean suits(final Board board, final int candidate) {
        if (drives.isEmpty()) {
            return !board.isBusyAtBoot(candidate) || (isPulledUpAtRest && FIXED_PULL_UPS.contains(candidate));
        }
        return !board.isBusyAtBoot(candidate)
                && BootState.of(board, candidate, drives.orElseThrow()).verdict() == BootState.Verdict.AT_REST;
    }
}
