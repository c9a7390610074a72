package slackwater.simulator.yard;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Air;
import slackwater.model.Arming;
import slackwater.model.Circuit;
import slackwater.model.Contact;
import slackwater.model.Controller;
import slackwater.model.Facts;
import slackwater.model.Field;
import slackwater.model.HoldUp;
import slackwater.model.Input;
import slackwater.model.Level;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Place;
import slackwater.model.Point;
import slackwater.model.Pull;
import slackwater.model.Ray;
import slackwater.model.Return;
import slackwater.model.Rig;
import slackwater.model.Supply;
import slackwater.model.Weather;
import slackwater.model.Zone;
import slackwater.model.board.Boards;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.model.kind.InputKind;
import slackwater.model.kind.OutputKind;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Quantity;
import slackwater.simulator.visitor.Being;
import slackwater.simulator.visitor.Visitor;

/** Rigs in a few words, and people who walk straight through them. */
final class RigWords {
    static final long S = 1_000_000_000L;
    static final long MS = 1_000_000L;

    private final List<Controller> controllers = new ArrayList<>();
    private final List<Input> inputs = new ArrayList<>();
    private final List<Output> outputs = new ArrayList<>();
    private final List<Circuit> circuits = new ArrayList<>();
    private final List<Supply> supplies = new ArrayList<>();
    private Optional<Air> air = Optional.empty();
    private Optional<Weather> weather = Optional.empty();
    private Load load = Load.NONE;

    RigWords controller(final String name, final boolean hasHoldUp) {
        final HoldUp holdUp = new HoldUp(OptionalInt.of(12), Duration.ofMillis(400), OptionalInt.empty());
        controllers.add(new Controller(
                name, Boards.named("pi-4").orElseThrow(), hasHoldUp ? Optional.of(holdUp) : Optional.empty()));
        return this;
    }

    RigWords air(final Air told) {
        air = Optional.of(told);
        return this;
    }

    RigWords weather(final Weather told) {
        weather = Optional.of(told);
        return this;
    }

    RigWords circuit(final Circuit told) {
        circuits.add(told);
        return this;
    }

    RigWords supply(final Supply told) {
        supplies.add(told);
        return this;
    }

    /** What every output from now on draws. */
    RigWords drawing(final Load next) {
        load = next;
        return this;
    }

    RigWords output(final Family family, final String name, final Object... keysAndValues) {
        return output(Part.of(family, name), keysAndValues);
    }

    RigWords output(final Part part, final Object... keysAndValues) {
        final String controller = controllers.get(controllers.size() - 1).name();
        outputs.add(new Output(
                part.name(),
                new Kind(part.family()),
                controller,
                controller,
                OptionalInt.empty(),
                Level.HIGH,
                part.contact(),
                new Output.Rest(part.onPowerLoss(), part.onAirLoss(), Optional.empty(), Optional.empty()),
                Limits.NONE,
                load,
                part.at(),
                part.reachM(),
                Output.Feedback.NONE,
                Optional.empty(),
                facts(keysAndValues)));
        return this;
    }

    RigWords input(final InputFamily family, final String name, final Object... keysAndValues) {
        return input(new Sensor(family, name, Input.Sees.NOTHING, Input.Use.SENSE), keysAndValues);
    }

    RigWords input(final Sensor sensor, final Object... keysAndValues) {
        final String controller = controllers.get(controllers.size() - 1).name();
        final Duration warmUp = sensor.family() == InputFamily.MOTION ? Duration.ofSeconds(60) : Duration.ZERO;
        inputs.add(new Input(
                sensor.name(),
                new Sort(sensor.family()),
                Optional.of(controller),
                List.of(controller),
                Map.of(),
                Level.LOW,
                Pull.UP,
                new Input.Proving(Duration.ZERO, Duration.ZERO, warmUp, Optional.empty()),
                sensor.use(),
                List.of(),
                sensor.sees(),
                facts(keysAndValues)));
        return this;
    }

    RigWords motion(final String name, final Field field, final Object... keysAndValues) {
        return input(
                new Sensor(
                        InputFamily.MOTION,
                        name,
                        new Input.Sees(Optional.of(field), Optional.empty()),
                        Input.Use.SENSE),
                keysAndValues);
    }

    RigWords beam(final String name, final Ray ray, final Object... keysAndValues) {
        return input(
                new Sensor(InputFamily.BEAM, name, new Input.Sees(Optional.empty(), Optional.of(ray)), Input.Use.SENSE),
                keysAndValues);
    }

    RigWords hungButton(final String release) {
        return input(
                new Sensor(InputFamily.BUTTON, release + "-hung", Input.Sees.NOTHING, Input.Use.HUNG),
                Fact.OF,
                release);
    }

    Rig rig() {
        final List<Zone> zones = controllers.stream()
                .map(controller -> new Zone(controller.name(), Zone.WhenAlone.REST, true))
                .toList();
        return new Rig(
                "test",
                Duration.ofMillis(10),
                Optional.of(new Place(54.1, -3.2, ZoneId.of("Europe/London"))),
                controllers,
                zones,
                inputs,
                outputs,
                List.of(),
                Arming.USUAL,
                List.of(),
                new Rig.Surroundings(Optional.empty(), air, Optional.empty(), weather, circuits, supplies));
    }

    /** Somebody who walks along the x axis at one speed. */
    static Visitor walker(final long arrivesNs, final double fromXM, final double toXM, final double heightM) {
        final double speedMps = 1.3;
        final long leavesNs = arrivesNs + (long) (Math.abs(toXM - fromXM) / speedMps * S);
        return Visitor.of(
                new Visitor.Body(0, 0, Being.ADULT, heightM),
                new long[] {arrivesNs, leavesNs},
                new double[] {fromXM, toXM},
                new double[] {0, 0});
    }

    /** Somebody who stands at one place. */
    static Visitor stander(final long arrivesNs, final long leavesNs, final double xM) {
        return Visitor.of(
                new Visitor.Body(0, 0, Being.ADULT, 1.7),
                new long[] {arrivesNs, leavesNs},
                new double[] {xM, xM},
                new double[] {0, 0});
    }

    private static Facts facts(final Object... keysAndValues) {
        final Map<String, Object> byKey = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            final Object value = keysAndValues[i + 1];
            byKey.put(
                    (String) keysAndValues[i],
                    value instanceof Double si ? new Quantity(si, Dimension.RATIO, si.toString()) : value);
        }
        return new Facts(byKey);
    }

    /** What an output is, apart from its own keys. */
    record Part(
            Family family,
            String name,
            Contact contact,
            Optional<Return> onPowerLoss,
            Optional<Return> onAirLoss,
            Optional<Point> at,
            double reachM) {
        static Part of(final Family family, final String name) {
            return new Part(
                    family, name, Contact.NORMALLY_OPEN, Optional.empty(), Optional.empty(), Optional.empty(), 0);
        }

        Part returns(final Return onPower, final Return onAir) {
            return new Part(family, name, contact, Optional.of(onPower), Optional.of(onAir), at, reachM);
        }

        Part standing(final Point where, final double reach) {
            return new Part(family, name, contact, onPowerLoss, onAirLoss, Optional.of(where), reach);
        }

        Part with(final Contact used) {
            return new Part(family, name, used, onPowerLoss, onAirLoss, at, reachM);
        }
    }

    /** What an input is, apart from its own keys. */
    record Sensor(InputFamily family, String name, Input.Sees sees, Input.Use use) {}

    private record Kind(Family family) implements OutputKind {
        @Override
        public String word() {
            return "kind";
        }
    }

    private record Sort(InputFamily family) implements InputKind {
        @Override
        public String word() {
            return "kind";
        }
    }
}
