package slackwater.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slackwater.model.Contact;
import slackwater.model.Controller;
import slackwater.model.Level;
import slackwater.model.Pull;
import slackwater.model.Rig;
import slackwater.model.board.BootState;

/**
 * What has to be known at the bench about one controller, before anybody decides how to print it.
 *
 * @param rig name of the rig
 * @param controller the controller and its board
 * @param lines everything that has a pin, by header pin
 * @param unwired everything that has none yet, in the order of the rig
 */
public record WiringFacts(String rig, Controller controller, List<Line> lines, List<Unwired> unwired) {

    /** What a line is for the controller. */
    public enum Role {
        OUTPUT("out"),
        INPUT("in"),
        /** Makes the pulses that hold the output supply's relay (S2). */
        HOLD_UP("out"),
        /** Reads that relay's auxiliary contact. */
        HOLD_UP_SEEN("in");

        private final String direction;

        Role(final String direction) {
            this.direction = direction;
        }

        /** {@code out} or {@code in}, as seen from the controller. */
        public String direction() {
            return direction;
        }
    }

    /**
     * One wire on the header.
     *
     * @param rest what an output's load does while nothing energises it; empty for an input
     * @param notes sentences that only this wire needs
     */
    public record Line(Thing thing, Pin pin, Signal signal, Optional<Rest> rest, List<String> notes) {
        public Line {
            notes = List.copyOf(notes);
        }
    }

    /** What the wire leads to; the name is the rig's, the kind the word of the rig file. */
    public record Thing(Role role, String name, String kind) {}

    /**
     * Where it is.
     *
     * @param header physical pin, 1 to 40
     * @param atReset the pull before any program runs (handbook 3.9)
     */
    public record Pin(int header, int gpio, Pull atReset) {}

    /**
     * What the program makes of the wire.
     *
     * @param active the level that energises, or means active; empty where pulses do
     * @param asked the pull that the program asks for; empty where it asks for none of its own
     */
    public record Signal(Optional<Level> active, Optional<Pull> asked) {}

    /**
     * An output at rest.
     *
     * @param level what the program writes at rest; empty where any steady level is rest
     * @param contact the contact that the load uses
     * @param load what the load does meanwhile, in a few words
     * @param boot what the line does from power-on until the program takes it
     */
    public record Rest(Optional<Level> level, Contact contact, String load, BootState boot) {}

    /**
     * Something without a pin.
     *
     * @param table the table of the rig file to write the pin into
     */
    public record Unwired(Thing thing, String table) {}

    public WiringFacts {
        lines = List.copyOf(lines);
        unwired = List.copyOf(unwired);
    }

    /** The facts of every controller, in the order of the rig. */
    public static List<WiringFacts> of(final Rig rig) {
        return rig.controllers().stream().map(controller -> of(rig, controller)).toList();
    }

    /** The facts of one controller. A pin off its header is refused by the checks, so here it is an exception. */
    public static WiringFacts of(final Rig rig, final Controller controller) {
        final Wires wires = new Wires(controller);
        controller.holdUp().ifPresent(wires::holdUp);
        rig.outputsOf(controller.name()).forEach(wires::output);
        rig.inputsOf(controller.name()).forEach(wires::input);
        final List<Line> sorted = new ArrayList<>(wires.lines());
        sorted.sort(Comparator.comparingInt(line -> line.pin().header()));
        return new WiringFacts(rig.name(), controller, sorted, wires.unwired());
    }

    /** The line on a header pin, or empty where none is. */
    public Optional<Line> on(final int headerPin) {
        return lines.stream().filter(line -> line.pin().header() == headerPin).findFirst();
    }

    /** Header pins that carry a signal such as {@code GND}, ascending. */
    public List<Integer> headerPinsOf(final String signal) {
        final List<String> signals = controller.board().signals();
        final List<Integer> found = new ArrayList<>();
        for (int index = 0; index < signals.size(); index++) {
            if (signals.get(index).equals(signal)) {
                found.add(index + 1);
            }
        }
        return found;
    }
}
