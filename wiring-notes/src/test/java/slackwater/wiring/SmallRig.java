package slackwater.wiring;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Arming;
import slackwater.model.Contact;
import slackwater.model.Controller;
import slackwater.model.Facts;
import slackwater.model.HoldUp;
import slackwater.model.Input;
import slackwater.model.Input.Proving;
import slackwater.model.Input.Sees;
import slackwater.model.Input.Use;
import slackwater.model.Level;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Output.Feedback;
import slackwater.model.Output.Rest;
import slackwater.model.Pull;
import slackwater.model.Return;
import slackwater.model.Rig;
import slackwater.model.Rig.Surroundings;
import slackwater.model.board.Board;
import slackwater.model.board.Boards;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.model.kind.InputKind;
import slackwater.model.kind.OutputKind;

/** A rig on one controller, put together by a test: what it does not say is the plainest thing possible. */
final class SmallRig {
    static final OptionalInt NOT_WIRED = OptionalInt.empty();

    private final List<Output> outputs = new ArrayList<>();
    private final List<Input> inputs = new ArrayList<>();
    private final String board;
    private Optional<HoldUp> holdUp = Optional.empty();

    SmallRig(final String board) {
        this.board = board;
    }

    /** A kind as the rig file names it. */
    record Kind(String word, Family family) implements OutputKind {}

    /** A kind of input as the rig file names it. */
    record SensorKind(String word, InputFamily family) implements InputKind {}

    SmallRig holdUp(final OptionalInt pin, final OptionalInt seenPin) {
        holdUp = Optional.of(new HoldUp(pin, Duration.ofMillis(400), seenPin));
        return this;
    }

    SmallRig valve(final String name, final OptionalInt pin, final Level energised) {
        final Rest rest =
                new Rest(Optional.of(Return.SPRING_RETURNS), Optional.empty(), Optional.empty(), Optional.empty());
        return output(name, new Kind("valve", Family.VALVE), pin, energised, Contact.NORMALLY_OPEN, rest);
    }

    SmallRig lamp(final String name, final OptionalInt pin, final Level energised, final Contact contact) {
        return output(name, new Kind("lamp", Family.LAMP), pin, energised, contact, Rest.UNSAID);
    }

    private SmallRig output(
            final String name,
            final OutputKind kind,
            final OptionalInt pin,
            final Level energised,
            final Contact contact,
            final Rest rest) {
        outputs.add(new Output(
                name,
                kind,
                "yard",
                "porch",
                pin,
                energised,
                contact,
                rest,
                Limits.NONE,
                Load.NONE,
                Optional.empty(),
                0,
                Feedback.NONE,
                Optional.of("bench"),
                Facts.NONE));
        return this;
    }

    SmallRig motion(final String name, final OptionalInt pin) {
        return input(name, new SensorKind("motion", InputFamily.MOTION), pin, Level.HIGH, Pull.DOWN);
    }

    SmallRig button(final String name, final OptionalInt pin) {
        return input(name, new SensorKind("button", InputFamily.BUTTON), pin, Level.LOW, Pull.UP);
    }

    SmallRig beamWithoutPull(final String name, final OptionalInt pin) {
        return input(name, new SensorKind("beam", InputFamily.BEAM), pin, Level.HIGH, Pull.NONE);
    }

    SmallRig stopLoop(final OptionalInt pin) {
        return input("stop-loop", new SensorKind("stop-loop", InputFamily.STOP_LOOP), pin, Level.LOW, Pull.UP);
    }

    private SmallRig input(
            final String name, final InputKind kind, final OptionalInt pin, final Level active, final Pull pull) {
        final Map<String, Integer> pins = pin.isPresent() ? Map.of("porch", pin.getAsInt()) : Map.of();
        final Proving proving = new Proving(Duration.ZERO, Duration.ZERO, Duration.ZERO, Optional.empty());
        inputs.add(new Input(
                name,
                kind,
                Optional.of("yard"),
                List.of("porch"),
                pins,
                active,
                pull,
                proving,
                Use.SENSE,
                List.of(),
                Sees.NOTHING,
                Facts.NONE));
        return this;
    }

    Rig rig() {
        final Board named = Boards.named(board).orElseThrow();
        return new Rig(
                "Bench",
                Duration.ofMillis(10),
                Optional.empty(),
                List.of(new Controller("porch", named, holdUp)),
                List.of(),
                inputs,
                outputs,
                List.of(),
                Arming.USUAL,
                List.of(),
                Surroundings.NONE);
    }
}
