package slackwater.model.file;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Facts;
import slackwater.model.Field;
import slackwater.model.Input;
import slackwater.model.Level;
import slackwater.model.Point;
import slackwater.model.Pull;
import slackwater.model.Ray;
import slackwater.model.finding.Findings.Words;
import slackwater.model.kind.InputFamily;
import slackwater.model.kind.InputKind;
import slackwater.model.quantity.Dimension;

/** Reads {@code [input.NAME]}. */
final class InputTable {
    private static final long HIGHEST_PIN = 999;

    private final TableReader reader;

    private InputTable(final TableReader reader) {
        this.reader = reader;
    }

    static Optional<Input> read(final String name, final TableReader reader) {
        final List<String> words = reader.context().kinds().inputWords();
        final String word = reader.required(
                "kind",
                "the kind decides what active means and how it is proven",
                Context.listed("add kind = one of: ", words, ""));
        final Optional<InputKind> kind = reader.context().kinds().input(word);
        if (kind.isEmpty() && !word.isEmpty()) {
            reader.unknownKind(word, words);
        }
        return kind.map(known -> new InputTable(reader).input(name, known));
    }

    private Input input(final String name, final InputKind kind) {
        final InputFamily family = kind.family();
        final boolean isLoop = family == InputFamily.STOP_LOOP;
        final Map<String, Integer> pins = isLoop ? loopPins() : new LinkedHashMap<>();
        final List<String> controllers = isLoop ? loopControllers(pins) : List.of(Items.controller(reader));
        if (!isLoop || controllers.size() == 1) {
            final OptionalInt pin = Items.pin(reader, "pin");
            if (pin.isPresent()) {
                pins.put(controllers.get(0), pin.getAsInt());
            }
        }
        final Optional<String> zone = isLoop ? Optional.empty() : Optional.of(Items.zone(reader));
        final Level active = reader.word("active", Choices.of(Level.class)).orElse(Level.HIGH);
        final Pull pull = reader.word("pull", Choices.of(Pull.class)).orElse(Pull.NONE);
        final Input.Proving proving = proving(family);
        final List<String> reachOf = reader.names("reach-of", Context.Thing.OUTPUT);
        final Input.Use use = use(family);
        final Input.Sees sees = sees(family);
        final Facts facts = Items.facts(reader, kind.keys());
        reader.finish();
        return new Input(name, kind, zone, controllers, pins, active, pull, proving, use, reachOf, sees, facts);
    }

    /** A stop loop's pins by controller: each controller sees the same loop. */
    private Map<String, Integer> loopPins() {
        final Map<String, Integer> pins = new LinkedHashMap<>();
        final Optional<TableReader> table = reader.table("pins");
        if (table.isPresent()) {
            for (final String controller : table.get().keys()) {
                if (!reader.context().names().controllers().contains(controller)) {
                    reader.context()
                            .unknown(
                                    Context.Thing.CONTROLLER,
                                    controller,
                                    reader.context().places().key(table.get().path(), controller));
                }
                table.get().count(controller, 0, HIGHEST_PIN).ifPresent(pin -> pins.put(controller, pin.intValue()));
            }
        }
        return pins;
    }

    private List<String> loopControllers(final Map<String, Integer> pins) {
        return pins.isEmpty() ? reader.context().names().controllers() : List.copyOf(pins.keySet());
    }

    private Input.Proving proving(final InputFamily family) {
        return new Input.Proving(
                reader.duration("active-after").orElse(family.activeAfter()),
                reader.duration("inactive-after").orElse(family.inactiveAfter()),
                reader.duration("warm-up").orElse(Duration.ZERO),
                reader.duration("stuck-after"));
    }

    private Input.Use use(final InputFamily family) {
        final boolean isPressed = family == InputFamily.BUTTON || family == InputFamily.KEY;
        return isPressed ? reader.word("use", Choices.of(Input.Use.class)).orElse(Input.Use.SENSE) : Input.Use.SENSE;
    }

    private Input.Sees sees(final InputFamily family) {
        return switch (family) {
            case MOTION -> new Input.Sees(field(), Optional.empty());
            case BEAM -> new Input.Sees(Optional.empty(), ray());
            default -> Input.Sees.NOTHING;
        };
    }

    private Optional<Field> field() {
        final boolean isPlaced = reader.has("at");
        for (final String key : List.of("facing", "angle", "range")) {
            if (isPlaced && !reader.has(key)) {
                reader.require(
                        key,
                        "a sensor with a place needs its whole field of view",
                        "add " + key + ", or leave" + " out at, facing, angle and range");
            } else if (!isPlaced && reader.has(key)) {
                reader.error(
                        "missing-key",
                        key,
                        new Words(
                                reader.title() + " says \"" + key + "\" but not \"at\"",
                                "a field of view without a place sees nobody",
                                "add at = [\"3 m\", \"2 m\"]"));
            }
        }
        final Optional<Point> at = reader.point("at");
        final double facing = reader.si("facing", Dimension.ANGLE);
        final double angle = reader.si("angle", Dimension.ANGLE);
        final double range = reader.si("range", Dimension.LENGTH);
        return at.map(place -> new Field(place, facing, angle, range));
    }

    private Optional<Ray> ray() {
        if (reader.has("beam") && !reader.has("height")) {
            reader.require("height", "small visitors pass under a high beam", "add height = \"0.4 m\"");
        }
        final double height = reader.si("height", Dimension.LENGTH);
        if (!reader.has("beam")) {
            return Optional.empty();
        }
        final List<Point> ends = reader.points("beam");
        if (ends.size() != 2) {
            reader.wrongType("beam", "two points, such as [[\"5 m\", \"-1 m\"], [\"5 m\", \"1 m\"]]");
            return Optional.empty();
        }
        return Optional.of(new Ray(ends.get(0), ends.get(1), height));
    }
}
