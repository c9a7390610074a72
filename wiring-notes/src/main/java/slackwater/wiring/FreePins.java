package slackwater.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import slackwater.model.Controller;
import slackwater.model.Input;
import slackwater.model.Level;
import slackwater.model.Output;
import slackwater.model.Pull;
import slackwater.model.Rig;
import slackwater.model.board.Board;
import slackwater.model.board.BootState;
import slackwater.model.board.BootState.Verdict;
import slackwater.model.kind.InputFamily;

/**
 * One controller's free pins, given out to the choosier first: outputs need a certain pull at reset, most inputs suit
 * any pin, and inputs that are active low with a pull-up suit even the two with a fixed one. The sets are nested, so
 * whoever goes without would have gone without in any other order.
 */
final class FreePins {
    private static final int FIXED_PULL_UP_FIRST = 2;
    private static final int FIXED_PULL_UP_LAST = 3;

    private final Rig rig;
    private final Controller controller;
    private final Board board;
    private final NavigableSet<Integer> free = new TreeSet<>();
    private final List<String> problems = new ArrayList<>();

    FreePins(final Rig rig, final Controller controller) {
        this.rig = rig;
        this.controller = controller;
        this.board = controller.board();
        free.addAll(board.header());
        free.removeIf(gpio -> board.isBusyAtBoot(gpio) && !hasFixedPullUp(gpio));
        controller.holdUp().ifPresent(holdUp -> {
            holdUp.pin().ifPresent(free::remove);
            holdUp.seenPin().ifPresent(free::remove);
        });
        rig.outputsOf(controller.name()).forEach(output -> output.pin().ifPresent(free::remove));
        rig.inputsOf(controller.name())
                .forEach(input -> input.pinOn(controller.name()).ifPresent(free::remove));
    }

    List<String> problems() {
        return problems;
    }

    List<Proposed> choose() {
        final List<Proposed> chosen = new ArrayList<>();
        controller.holdUp().filter(holdUp -> holdUp.pin().isEmpty()).ifPresent(holdUp -> chooseHoldUp(chosen));
        rig.outputsOf(controller.name()).stream()
                .filter(output -> output.pin().isEmpty())
                .forEach(output -> chooseOutput(output, chosen));
        final List<Input> inputs = rig.inputsOf(controller.name()).stream()
                .filter(input -> input.pinOn(controller.name()).isEmpty())
                .toList();
        final List<Proposed> forInputs = new ArrayList<>();
        inputs.stream().filter(input -> !suitsFixedPullUp(input)).forEach(input -> chooseInput(input, forInputs));
        inputs.stream().filter(FreePins::suitsFixedPullUp).forEach(input -> chooseInput(input, forInputs));
        final List<String> tables = inputs.stream().map(FreePins::tableOf).toList();
        forInputs.sort(Comparator.comparingInt(proposed -> tables.indexOf(proposed.table())));
        chosen.addAll(forInputs);
        return chosen;
    }

    private void chooseHoldUp(final List<Proposed> chosen) {
        final String table = "controller." + controller.name();
        final Optional<Integer> gpio =
                take(each -> !board.isBusyAtBoot(each) && board.pullAtReset(each) == Pull.DOWN, Pull.DOWN);
        if (gpio.isEmpty()) {
            problems.add(lead("the hold-up of [" + table + "]")
                    + "it needs one that is pulled down at reset: move an output to another controller.");
            return;
        }
        chosen.add(new Proposed(controller.name(), table, gpio.get(), Proposed.Key.HOLD_UP_PIN));
    }

    private void chooseOutput(final Output output, final List<Proposed> chosen) {
        final Level energised = output.energisedLevel();
        final String table = "output." + output.name();
        final Pull matching = energised == Level.HIGH ? Pull.DOWN : Pull.UP;
        final Optional<Integer> gpio = take(each -> restsAtBoot(each, energised), matching);
        if (gpio.isEmpty()) {
            problems.add(lead("[" + table + "]") + "an output energised by "
                    + energised.name().toLowerCase(Locale.ROOT) + " needs one that is pulled "
                    + matching.name().toLowerCase(Locale.ROOT) + " at reset: " + remedy(energised));
            return;
        }
        chosen.add(Proposed.pin(controller.name(), table, gpio.get()));
    }

    private void chooseInput(final Input input, final List<Proposed> chosen) {
        final String table = tableOf(input);
        final Optional<Integer> gpio = take(each -> suitsFixedPullUp(input) || !hasFixedPullUp(each), input.pull());
        if (gpio.isEmpty()) {
            problems.add(lead("[" + table + "]") + "move an input or an output to another controller.");
            return;
        }
        final Proposed.Key key = input.family() == InputFamily.STOP_LOOP ? Proposed.Key.PINS : Proposed.Key.PIN;
        chosen.add(new Proposed(controller.name(), table, gpio.get(), key));
    }

    /** The best that suits: no fixed pull-up, no optional bus, the pull wanted, then the first on the header. */
    private Optional<Integer> take(final IntPredicate suits, final Pull wanted) {
        final Comparator<Integer> better = Comparator.<Integer, Boolean>comparing(FreePins::hasFixedPullUp)
                .thenComparing(board::isBusyIfEnabled)
                .thenComparing(gpio -> wanted != Pull.NONE && board.pullAtReset(gpio) != wanted)
                .thenComparing(gpio -> board.headerPin(gpio).orElseThrow());
        final Optional<Integer> best = free.stream().filter(suits::test).min(better);
        best.ifPresent(free::remove);
        return best;
    }

    private boolean restsAtBoot(final int gpio, final Level energised) {
        return !board.isBusyAtBoot(gpio) && BootState.of(board, gpio, energised).verdict() == Verdict.AT_REST;
    }

    private String lead(final String what) {
        final String state = free.isEmpty() ? "has no free pin" : "has no free pin that suits";
        return controller.name() + " (" + board.word() + ") " + state + " for " + what + "; ";
    }

    private static String remedy(final Level energised) {
        return energised == Level.HIGH
                ? "move an output to another controller."
                : "use a driver that high energises, or move an output to another controller.";
    }

    /** The two pins that no program can pull down (handbook 3.11). */
    static boolean hasFixedPullUp(final int gpio) {
        return gpio >= FIXED_PULL_UP_FIRST && gpio <= FIXED_PULL_UP_LAST;
    }

    private static boolean suitsFixedPullUp(final Input input) {
        return input.activeLevel() == Level.LOW && input.pull() == Pull.UP;
    }

    private static String tableOf(final Input input) {
        return "input." + input.name();
    }
}
