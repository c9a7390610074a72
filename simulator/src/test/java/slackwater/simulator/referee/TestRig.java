package slackwater.simulator.referee;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Arming;
import slackwater.model.Condition;
import slackwater.model.Contact;
import slackwater.model.Controller;
import slackwater.model.Facts;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Level;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Pull;
import slackwater.model.Rig;
import slackwater.model.Zone;
import slackwater.model.board.Boards;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.model.kind.InputKind;
import slackwater.model.kind.OutputKind;

/** A rig of two banks put together by hand; the scan is 10 ms, and every pin is active or energised low unless said. */
final class TestRig {
    static final long MS = 1_000_000L;

    private record Kind(String word, Family family) implements OutputKind {}

    private record Sensor(String word, InputFamily family) implements InputKind {}

    private final List<Input> inputs = new ArrayList<>();
    private final List<Output> outputs = new ArrayList<>();
    private final List<Interlock> interlocks = new ArrayList<>();
    private Duration warning = Duration.ZERO;

    TestRig() {
        add(
                "stop-loop",
                InputFamily.STOP_LOOP,
                Input.Use.SENSE,
                new Input.Proving(ms(200), ms(0), ms(0), Optional.empty()),
                Facts.NONE);
    }

    static Duration ms(final long ms) {
        return Duration.ofMillis(ms);
    }

    static Limits limits(final Duration longestOn, final Duration shortestOff) {
        return new Limits(Optional.of(longestOn), shortestOff, Optional.empty());
    }

    static Condition is(final String input) {
        return new Condition(input, true);
    }

    static Condition not(final String input) {
        return new Condition(input, false);
    }

    TestRig warning(final Duration wanted) {
        warning = wanted;
        return this;
    }

    TestRig output(final String name, final Family family) {
        return output(name, family, Limits.NONE, Load.NONE, Facts.NONE);
    }

    TestRig limited(final String name, final Family family, final Limits limits) {
        return output(name, family, limits, Load.NONE, Facts.NONE);
    }

    /** The bank is the word before the first hyphen, or north. */
    TestRig output(final String name, final Family family, final Limits limits, final Load load, final Facts facts) {
        return output(name, family, limits, load, facts, Level.LOW);
    }

    TestRig output(
            final String name,
            final Family family,
            final Limits limits,
            final Load load,
            final Facts facts,
            final Level energised) {
        outputs.add(new Output(
                name,
                new Kind(name, family),
                bank(name),
                bank(name),
                OptionalInt.empty(),
                energised,
                Contact.NORMALLY_OPEN,
                Output.Rest.UNSAID,
                limits,
                load,
                Optional.empty(),
                0.5,
                Output.Feedback.NONE,
                Optional.empty(),
                facts));
        return this;
    }

    private static String bank(final String name) {
        return name.startsWith("south") ? "south" : "north";
    }

    TestRig input(
            final String name, final InputFamily family, final Duration activeAfter, final Duration inactiveAfter) {
        return add(
                name,
                family,
                Input.Use.SENSE,
                new Input.Proving(activeAfter, inactiveAfter, ms(0), Optional.empty()),
                Facts.NONE);
    }

    TestRig input(final String name, final InputFamily family, final Input.Proving proving) {
        return add(name, family, Input.Use.SENSE, proving, Facts.NONE);
    }

    TestRig button(final String name, final Input.Use use, final Facts facts) {
        return add(name, InputFamily.BUTTON, use, new Input.Proving(ms(30), ms(30), ms(0), Optional.empty()), facts);
    }

    private TestRig add(
            final String name,
            final InputFamily family,
            final Input.Use use,
            final Input.Proving proving,
            final Facts facts) {
        final boolean isLoop = family == InputFamily.STOP_LOOP;
        inputs.add(new Input(
                name,
                new Sensor(name, family),
                isLoop ? Optional.empty() : Optional.of(bank(name)),
                isLoop ? List.of("north", "south") : List.of(bank(name)),
                Map.of(),
                Level.LOW,
                Pull.UP,
                proving,
                use,
                List.of(),
                Input.Sees.NOTHING,
                facts));
        return this;
    }

    TestRig interlock(final Interlock interlock) {
        interlocks.add(interlock);
        return this;
    }

    Rig build() {
        return new Rig(
                "two banks",
                ms(10),
                Optional.empty(),
                List.of(controller("north"), controller("south")),
                List.of(new Zone("north", Zone.WhenAlone.REST, true), new Zone("south", Zone.WhenAlone.REST, true)),
                inputs,
                outputs,
                interlocks,
                new Arming(warning, List.of(), Duration.ZERO),
                List.of("Maren", "Ole"),
                Rig.Surroundings.NONE);
    }

    private static Controller controller(final String name) {
        return new Controller(name, Boards.named("pi-4").orElseThrow(), Optional.empty());
    }
}
