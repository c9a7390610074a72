package slackwater.model.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Facts;
import slackwater.model.kind.Key;

/** What tables of inputs, outputs and cues have in common. */
final class Items {
    private static final long HIGHEST_PIN = 999;
    private static final long MOST_COUNT = 1_000_000;

    private Items() {}

    /** The zone that it names, or the only one. */
    static String zone(final TableReader reader) {
        final List<String> zones = reader.context().names().zones();
        return named(reader, Context.Thing.ZONE, zones, "several zones are armed, locked out and faulted apart");
    }

    /** The controller that it names, or the only one. */
    static String controller(final TableReader reader) {
        final List<String> controllers = reader.context().names().controllers();
        if (controllers.isEmpty()) {
            reader.has("controller");
            return "";
        }
        return named(reader, Context.Thing.CONTROLLER, controllers, "there are several, and it is wired to one");
    }

    static OptionalInt pin(final TableReader reader, final String key) {
        return reader.count(key, 0, HIGHEST_PIN)
                .map(pin -> OptionalInt.of(pin.intValue()))
                .orElse(OptionalInt.empty());
    }

    /** What a kind's own keys say. */
    static Facts facts(final TableReader reader, final List<Key> keys) {
        final Map<String, Object> facts = new LinkedHashMap<>();
        for (final Key key : keys) {
            if (key.isRequired()) {
                reader.require(key.name(), "it is " + key.meaning(), "add " + key.name() + " = " + example(key));
            }
            fact(reader, key).ifPresent(value -> facts.put(key.name(), value));
        }
        return new Facts(facts);
    }

    private static String named(
            final TableReader reader, final Context.Thing thing, final List<String> known, final String why) {
        final String key = thing.table();
        if (known.size() == 1 && !reader.has(key)) {
            return known.get(0);
        }
        reader.require(key, why, Context.listed("add " + key + " = one of: ", known, "add one"));
        return reader.name(key, thing).orElse("");
    }

    private static Optional<? extends Object> fact(final TableReader reader, final Key key) {
        return switch (key.type()) {
            case DURATION -> reader.duration(key.name());
            case QUANTITY -> reader.quantity(key.name(), key.dimension().orElseThrow());
            case COUNT -> reader.count(key.name(), 0, MOST_COUNT);
            case FLAG -> reader.has(key.name()) ? Optional.of(reader.flag(key.name())) : Optional.empty();
            case TEXT -> reader.text(key.name());
            case INPUT_NAME -> reader.name(key.name(), Context.Thing.INPUT);
            case OUTPUT_NAME -> reader.name(key.name(), Context.Thing.OUTPUT);
        };
    }

    private static String example(final Key key) {
        return switch (key.type()) {
            case DURATION, QUANTITY ->
                key.dimension().map(TableReader::wanted).orElse("a time").replaceFirst(".*\"(.*)\".*", "\"$1\"");
            case COUNT -> "1";
            case FLAG -> "true";
            case TEXT, INPUT_NAME, OUTPUT_NAME -> "\"...\"";
        };
    }
}
