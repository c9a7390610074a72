package slackwater.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Contact;
import slackwater.model.Controller;
import slackwater.model.HoldUp;
import slackwater.model.Input;
import slackwater.model.Level;
import slackwater.model.Output;
import slackwater.model.Pull;
import slackwater.model.board.Board;
import slackwater.model.board.BootState;
import slackwater.model.board.BootState.Verdict;
import slackwater.model.kind.InputFamily;
import slackwater.wiring.WiringFacts.Line;
import slackwater.wiring.WiringFacts.Pin;
import slackwater.wiring.WiringFacts.Rest;
import slackwater.wiring.WiringFacts.Role;
import slackwater.wiring.WiringFacts.Signal;
import slackwater.wiring.WiringFacts.Thing;
import slackwater.wiring.WiringFacts.Unwired;

/** Collects one controller's wires: each either has a pin and becomes a line, or waits for one. */
final class Wires {
    private final Controller controller;
    private final Board board;
    private final List<Line> lines = new ArrayList<>();
    private final List<Unwired> unwired = new ArrayList<>();

    Wires(final Controller controller) {
        this.controller = controller;
        this.board = controller.board();
    }

    List<Line> lines() {
        return lines;
    }

    List<Unwired> unwired() {
        return unwired;
    }

    /** The relay is held by pulses alone (S2), so its pin has no level that energises. */
    void holdUp(final HoldUp holdUp) {
        final Thing pulses = new Thing(Role.HOLD_UP, "hold-up", "relay");
        final String table = "controller." + controller.name();
        if (holdUp.pin().isPresent()) {
            final int gpio = holdUp.pin().getAsInt();
            final Rest rest = new Rest(Optional.empty(), Contact.NORMALLY_OPEN, "relay open", holdUpAtBoot(gpio));
            final List<String> notes = notes(gpio, Optional.of(rest));
            notes.add("Only pulses hold the relay, through an AC-coupled stage: any steady level opens it.");
            final Signal signal = new Signal(Optional.empty(), Optional.empty());
            lines.add(new Line(pulses, pin(gpio), signal, Optional.of(rest), notes));
        } else {
            unwired.add(new Unwired(pulses, table));
        }
        if (holdUp.seenPin().isPresent()) {
            final int gpio = holdUp.seenPin().getAsInt();
            final Thing seen = new Thing(Role.HOLD_UP_SEEN, "hold-up seen", "contact");
            final List<String> notes = notes(gpio, Optional.empty());
            notes.add("The relay's auxiliary contact: high while the relay is closed.");
            final Signal signal = new Signal(Optional.of(Level.HIGH), Optional.empty());
            lines.add(new Line(seen, pin(gpio), signal, Optional.empty(), notes));
        }
    }

    void output(final Output output) {
        final Thing thing = new Thing(Role.OUTPUT, output.name(), output.kind().word());
        if (output.pin().isEmpty()) {
            unwired.add(new Unwired(thing, "output." + output.name()));
            return;
        }
        final int gpio = output.pin().getAsInt();
        final Pin pin = pin(gpio);
        final BootState boot = BootState.of(board, gpio, output.energisedLevel());
        final Rest rest = new Rest(Optional.of(output.restLevel()), output.contact(), loadAtRest(output), boot);
        final List<String> notes = notes(gpio, Optional.of(rest));
        if (output.contact() == Contact.NORMALLY_CLOSED) {
            notes.add("On at rest, by a normally closed contact: keep it outside the hold-up relay's supply.");
        }
        if (hasCoil(output)) {
            notes.add("Coil or motor on direct current: a diode across it, at the load (flyback-diodes.md).");
        }
        final Signal signal = new Signal(Optional.of(output.energisedLevel()), Optional.empty());
        lines.add(new Line(thing, pin, signal, Optional.of(rest), notes));
    }

    void input(final Input input) {
        final Thing thing = new Thing(Role.INPUT, input.name(), input.kind().word());
        final OptionalInt wanted = input.pinOn(controller.name());
        if (wanted.isEmpty()) {
            unwired.add(new Unwired(thing, "input." + input.name()));
            return;
        }
        final int gpio = wanted.getAsInt();
        final Pin pin = pin(gpio);
        final List<String> notes = notes(gpio, Optional.empty());
        if (input.pull() == Pull.DOWN && FreePins.hasFixedPullUp(gpio)) {
            notes.add("The program's pull-down cannot win against that: use another pin.");
        }
        if (input.pull() == Pull.NONE) {
            notes.add(
                    "The program asks for no pull: the sensor has to drive the line both ways, or a cut wire floats.");
        }
        if (input.family() == InputFamily.STOP_LOOP) {
            notes.add("Only sees the stop loop; the loop itself opens the output supplies (stop-loop.md).");
        }
        final Signal signal = new Signal(Optional.of(input.activeLevel()), Optional.of(input.pull()));
        lines.add(new Line(thing, pin, signal, Optional.empty(), notes));
    }

    private Pin pin(final int gpio) {
        final int header = board.headerPin(gpio)
                .orElseThrow(() -> new IllegalArgumentException(
                        "gpio=" + gpio + " on " + controller.name() + " is not on the header of " + board.word()));
        return new Pin(header, gpio, board.pullAtReset(gpio));
    }

    /** What the pin itself is good for: the verdict's reason says it where there is one to say. */
    private List<String> notes(final int gpio, final Optional<Rest> rest) {
        final List<String> notes = new ArrayList<>();
        final boolean isWarned = rest.isPresent() && rest.get().boot().verdict() != Verdict.AT_REST;
        if (isWarned) {
            notes.add(rest.orElseThrow().boot().reason());
        } else if (board.isBusyAtBoot(gpio)) {
            notes.add("GPIO" + gpio + ": " + board.lifeAtBoot(gpio) + ".");
        }
        if (board.isBusyIfEnabled(gpio)) {
            notes.add(capital(board.lifeIfEnabled(gpio)) + ": leave that bus off.");
        }
        return notes;
    }

    /** Any steady level is rest, so only a pin that may chatter by itself can hold the relay. */
    private BootState holdUpAtBoot(final int gpio) {
        if (board.isBusyAtBoot(gpio)) {
            return new BootState(
                    Verdict.UNCERTAIN,
                    "GPIO" + gpio + ": " + board.lifeAtBoot(gpio) + "; its edges may look like the scan's pulses.");
        }
        return new BootState(Verdict.AT_REST, "GPIO" + gpio + " is steady until the program runs.");
    }

    /** On at rest only through a normally closed contact (S15). */
    private static String loadAtRest(final Output output) {
        final String load = output.contact() == Contact.NORMALLY_CLOSED ? "on" : "off";
        return output.rest()
                .onPowerLoss()
                .map(way -> load + ", " + way.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .orElse(load);
    }

    private static boolean hasCoil(final Output output) {
        return switch (output.family()) {
            case VALVE, AIR_SUPPLY, PUMP, FAN, RELEASE -> true;
            case HEATER, STROBE, LAMP, MISTER, SOUNDER, CONTACT -> false;
        };
    }

    private static String capital(final String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
