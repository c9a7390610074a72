package slackwater.model.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import slackwater.model.Begun;
import slackwater.model.Condition;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.finding.Findings.Words;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Quantity;

/** Reads the tables of interlocks: {@code [permissive.NAME]}, {@code [trip.NAME]} and the others. */
final class InterlockTables {
    /** Groups of interlock tables, in the order in which a rig has them. */
    static final List<String> GROUPS = List.of("permissive", "trip", "exclusion", "shed", "load-limit", "flash-limit");

    private static final long MOST_FLASHES = 1_000;

    private final List<Output> outputs;

    /** Needs the outputs to know which of them move. */
    InterlockTables(final List<Output> outputs) {
        this.outputs = List.copyOf(outputs);
    }

    Interlock read(final String group, final String name, final TableReader reader) {
        reader.require("outputs", "an interlock that guards nothing refuses nothing", "add outputs = [\"...\"]");
        final List<String> guarded = reader.names("outputs", Context.Thing.OUTPUT);
        if (guarded.isEmpty() && reader.has("outputs")) {
            reader.wrongType("outputs", "a list of at least one output");
        }
        final Interlock interlock = switch (group) {
            case "permissive" ->
                new Interlock.Permissive(name, guarded, conditions(reader, "needs"), begun(reader, guarded));
            case "trip" -> new Interlock.Trip(name, guarded, conditions(reader, "when"), begun(reader, guarded));
            case "exclusion" -> new Interlock.Exclusion(name, guarded, clearAfter(reader));
            case "shed" -> new Interlock.Shed(name, guarded, conditions(reader, "needs"), nextAfter(reader));
            case "load-limit" -> loadLimit(name, guarded, reader);
            case "flash-limit" -> flashLimit(name, guarded, reader);
            default -> throw new IllegalArgumentException("no interlock tables are called " + group);
        };
        reader.finish();
        return interlock;
    }

    private static List<Condition> conditions(final TableReader reader, final String key) {
        reader.require(key, "without a condition it would never judge anything", "add " + key + " = [\"...\"]");
        final List<Condition> conditions = reader.conditions(key);
        if (conditions.isEmpty() && reader.has(key)) {
            reader.wrongType(key, "a list of at least one condition, such as [\"not reach\"]");
        }
        return conditions;
    }

    /** Where something moves, the builder must have thought about a stroke that has begun (S1). */
    private Begun begun(final TableReader reader, final List<String> guarded) {
        final boolean moves = outputs.stream()
                .anyMatch(output ->
                        guarded.contains(output.name()) && output.family().moves());
        if (moves) {
            reader.require(
                    "begun",
                    "it guards something that moves: a return may hit where the stroke would not",
                    "add begun = \"rest\" (goes back at once) or begun = \"finish\" (no new start)");
        }
        return reader.word("begun", Choices.of(Begun.class)).orElse(Begun.REST);
    }

    private static Duration clearAfter(final TableReader reader) {
        reader.require(
                "clear-after",
                "an output counts until it is truly at rest",
                "add clear-after = \"0.5 s\", or \"0 s\" where it rests at once");
        return reader.duration("clear-after").orElse(Duration.ZERO);
    }

    private static Duration nextAfter(final TableReader reader) {
        reader.require(
                "next-after",
                "the next output is shed only when going without the first was not enough",
                "add next-after = \"30 s\"");
        return reader.duration("next-after").orElse(Duration.ZERO);
    }

    private static Interlock loadLimit(final String name, final List<String> guarded, final TableReader reader) {
        reader.require("limit", "a limit without a number limits nothing", "add limit = \"4.5 A\"");
        final double amps = reader.si("limit", Dimension.CURRENT);
        final Map<String, Double> shares = shares(
                reader,
                (table, controller) ->
                        table.quantity(controller, Dimension.CURRENT).map(Quantity::si));
        final double sum =
                shares.values().stream().mapToDouble(Double::doubleValue).sum();
        checkSum(reader, shares.isEmpty() || Math.abs(sum - amps) < 1e-9, Texts.plain(sum), Texts.plain(amps));
        return new Interlock.LoadLimit(name, guarded, amps, shares);
    }

    private static Interlock flashLimit(final String name, final List<String> guarded, final TableReader reader) {
        reader.require("flashes", "a limit without a number limits nothing", "add flashes = 3");
        final long flashes = reader.count("flashes", 1, MOST_FLASHES).orElse(1L);
        final Map<String, Integer> shares = shares(
                reader,
                (table, controller) -> table.count(controller, 0, MOST_FLASHES).map(Long::intValue));
        final int sum = shares.values().stream().mapToInt(Integer::intValue).sum();
        checkSum(reader, shares.isEmpty() || sum == flashes, String.valueOf(sum), String.valueOf(flashes));
        return new Interlock.FlashLimit(name, guarded, (int) flashes, shares);
    }

    private static <T> Map<String, T> shares(
            final TableReader reader, final BiFunction<TableReader, String, Optional<T>> read) {
        final Map<String, T> shares = new LinkedHashMap<>();
        final List<TableReader> tables = new ArrayList<>();
        reader.table("shares").ifPresent(tables::add);
        for (final TableReader table : tables) {
            for (final String controller : table.keys()) {
                if (!reader.context().names().controllers().contains(controller)) {
                    reader.context()
                            .unknown(
                                    Context.Thing.CONTROLLER,
                                    controller,
                                    reader.context().places().key(table.path(), controller));
                }
                read.apply(table, controller).ifPresent(share -> shares.put(controller, share));
            }
        }
        return shares;
    }

    /** Fixed shares add up to the limit (S13). */
    private static void checkSum(
            final TableReader reader, final boolean isRight, final String sum, final String limit) {
        if (!isRight) {
            reader.error(
                    "shares-do-not-add-up",
                    "shares",
                    new Words(
                            "the shares add up to " + sum + ", the limit is " + limit,
                            "each controller keeps its own share without asking the others, also while the network is gone",
                            "write shares whose sum is " + limit));
        }
    }
}
