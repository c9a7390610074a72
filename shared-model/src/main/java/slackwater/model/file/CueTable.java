package slackwater.model.file;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import slackwater.model.Condition;
import slackwater.model.Cue;
import slackwater.model.Facts;
import slackwater.model.Start;
import slackwater.model.Step;
import slackwater.model.finding.Findings.Words;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Parsed;
import slackwater.model.quantity.Quantities;
import slackwater.model.quantity.Quantity;

/** Reads {@code [cue.NAME]}. */
final class CueTable {
    private static final long HIGHEST_PRIORITY = 1_000;
    private static final String STARTS = "the name of an input, { all = [\"a\", \"b\"], within = \"4 s\" }"
            + " or { order = [\"a\", \"b\"], within = \"5 s\" }";

    private final TableReader reader;

    private CueTable(final TableReader reader) {
        this.reader = reader;
    }

    static Cue read(final String name, final TableReader reader) {
        return new CueTable(reader).cue(name);
    }

    private Cue cue(final String name) {
        final String zone = Items.zone(reader);
        final int priority =
                reader.count("priority", 0, HIGHEST_PRIORITY).orElse(0L).intValue();
        reader.require("starts", "a cue that nothing starts is never played", "add starts = \"...\", an input");
        final Start start = start().orElse(new Start.OnInput(""));
        final List<Condition> provided = reader.conditions("provided");
        final Optional<Duration> againAfterClear = reader.duration("again-after-clear");
        final Duration holdOff = reader.duration("hold-off").orElse(Duration.ZERO);
        final Optional<String> code = reader.text("code");
        final List<Step> steps = steps(code.isPresent());
        final Facts facts = code.isPresent() ? facts() : Facts.NONE;
        reader.finish();
        return new Cue(name, zone, priority, start, provided, againAfterClear, holdOff, steps, code, facts);
    }

    private List<Step> steps(final boolean isInCode) {
        if (isInCode && reader.has("steps")) {
            reader.error(
                    "steps-and-code",
                    "steps",
                    new Words(
                            reader.title() + " has both steps and code",
                            "only one of the two could be played",
                            "remove the steps or the code"));
        }
        if (!isInCode) {
            reader.require("steps", "a cue without steps does nothing", "add steps = [ ... ]");
        }
        final List<TableReader> tables = reader.tables("steps");
        if (!isInCode && reader.raw("steps").filter(TomlArray.class::isInstance).isPresent() && tables.isEmpty()) {
            reader.wrongType(
                    "steps", "a list of at least one step, such as [ { energise = \"lamp\", for = \"2 s\" } ]");
        }
        return StepTables.all(tables);
    }

    private Optional<Start> start() {
        final Optional<Object> raw = reader.raw("starts");
        if (raw.isEmpty()) {
            return Optional.empty();
        }
        if (raw.get() instanceof String) {
            return reader.name("starts", Context.Thing.INPUT).map(Start.OnInput::new);
        }
        if (!(raw.get() instanceof TomlTable)) {
            reader.wrongType("starts", STARTS);
            return Optional.empty();
        }
        return reader.table("starts").flatMap(this::several);
    }

    private Optional<Start> several(final TableReader table) {
        final boolean isOrdered = table.has("order");
        if (isOrdered == table.has("all")) {
            reader.wrongType("starts", STARTS);
            return Optional.empty();
        }
        table.require("within", "without a time the first could be from yesterday", "add within = \"5 s\"");
        final Duration within = table.duration("within").orElse(Duration.ofSeconds(1));
        final String key = isOrdered ? "order" : "all";
        final List<String> inputs = table.names(key, Context.Thing.INPUT);
        table.finish();
        if (inputs.size() < 2 || (isOrdered && inputs.size() > 2)) {
            table.wrongType(key, isOrdered ? "a pair of inputs" : "a list of at least two inputs");
            return Optional.empty();
        }
        return Optional.of(
                isOrdered
                        ? new Start.InOrder(inputs.get(0), inputs.get(1), within)
                        : new Start.AllWithin(inputs, within));
    }

    /** The keys that only the code knows: times, other quantities, whole numbers, flags, and else texts. */
    private Facts facts() {
        final List<String> ours =
                List.of("zone", "priority", "starts", "provided", "again-after-clear", "hold-off", "code", "steps");
        final Map<String, Object> facts = new LinkedHashMap<>();
        for (final String key : reader.keys()) {
            if (!ours.contains(key)) {
                reader.raw(key).flatMap(value -> fact(key, value)).ifPresent(fact -> facts.put(key, fact));
            }
        }
        return new Facts(facts);
    }

    private Optional<Object> fact(final String key, final Object value) {
        if (value instanceof Long || value instanceof Boolean) {
            return Optional.of(value);
        }
        if (!(value instanceof String text)) {
            reader.wrongType(key, "a text, a whole number, true or false");
            return Optional.empty();
        }
        if (!(Quantities.parseAny(text) instanceof Parsed.Value<Quantity> quantity)) {
            return Optional.of(text);
        }
        final boolean isTime = quantity.value().dimension() == Dimension.TIME;
        return isTime ? reader.duration(key).map(Object.class::cast) : Optional.of(quantity.value());
    }
}
