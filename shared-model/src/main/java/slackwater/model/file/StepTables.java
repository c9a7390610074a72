package slackwater.model.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlArray;
import slackwater.model.Condition;
import slackwater.model.Step;
import slackwater.model.finding.Findings.Words;

/** Reads the steps of a cue: one table each, told apart by the key that says what the step does. */
final class StepTables {
    private static final List<String> VERBS = List.of("energise", "pause", "await", "one-of");
    private static final String FORMS = "{ energise = \"lamp\", for = \"2 s\" }, { pause = \"1 s\" },"
            + " { await = \"beam\", at-most = \"6 s\", else = \"end\" } or { one-of = [ [ ... ], [ ... ] ] }";

    private StepTables() {}

    static List<Step> all(final List<TableReader> tables) {
        final List<Step> steps = new ArrayList<>();
        tables.forEach(table -> step(table, true).ifPresent(steps::add));
        return steps;
    }

    private static Optional<Step> step(final TableReader reader, final boolean isOutermost) {
        final List<String> verbs =
                reader.keys().stream().filter(VERBS::contains).toList();
        if (verbs.size() != 1) {
            reader.context()
                    .error(
                            "not-a-step",
                            reader.heading(),
                            new Words(
                                    verbs.isEmpty() ? "this step does nothing" : "this step does two things at once",
                                    "each step is one line that does one thing",
                                    "write " + FORMS));
            return Optional.empty();
        }
        final String verb = verbs.get(0);
        final Optional<Step> step = switch (verb) {
            case "energise" -> Optional.of(energise(reader));
            case "pause" -> Optional.of(pause(reader));
            default -> outermost(verb, reader, isOutermost);
        };
        if (step.isPresent()) {
            reader.finish();
        }
        return step;
    }

    private static Step energise(final TableReader reader) {
        final List<String> outputs = reader.names("energise", Context.Thing.OUTPUT);
        if (outputs.isEmpty()) {
            reader.wrongType("energise", "the name of an output, or a list of at least one");
        }
        reader.require("for", "a wish without an end would be held", "add for = \"1.5 s\"");
        final Optional<Duration> at = reader.duration("at");
        final Duration lasts = positive(reader, "for");
        return new Step.Energise(outputs, at, lasts, vary(reader), blink(reader));
    }

    private static Step pause(final TableReader reader) {
        return new Step.Pause(reader.duration("pause").orElse(Duration.ZERO), vary(reader));
    }

    private static Optional<Step> outermost(final String verb, final TableReader reader, final boolean isOutermost) {
        if (!isOutermost) {
            reader.error(
                    "nested-step",
                    verb,
                    new Words(
                            "\"" + verb + "\" stands within one-of",
                            "a choice is played through without waiting or choosing again",
                            "put it before or after the one-of"));
            return Optional.empty();
        }
        return Optional.of(verb.equals("await") ? await(reader) : oneOf(reader));
    }

    private static Step await(final TableReader reader) {
        final Condition condition = reader.text("await")
                .map(text -> reader.condition(text, "await"))
                .orElse(new Condition("", true));
        reader.require("at-most", "a cue that waits for ever never ends", "add at-most = \"6 s\"");
        final Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("end", false);
        words.put("go-on", true);
        reader.require("else", "it decides what happens when nobody comes", "add else = \"end\" or else = \"go-on\"");
        return new Step.Await(
                condition,
                reader.duration("at-most").orElse(Duration.ZERO),
                reader.word("else", words).orElse(false));
    }

    private static Step oneOf(final TableReader reader) {
        final String wanted = "a list of at least one list of steps, such as [ [ { ... } ], [ { ... }, { ... } ] ]";
        final List<List<Step>> choices = new ArrayList<>();
        if (!(reader.raw("one-of").orElse("") instanceof TomlArray array) || array.isEmpty()) {
            reader.wrongType("one-of", wanted);
            return new Step.OneOf(List.of());
        }
        for (int i = 0; i < array.size(); i++) {
            final String place = "one-of[" + i + "]";
            if (array.get(i) instanceof TomlArray choice && !choice.isEmpty()) {
                final List<Step> steps = new ArrayList<>();
                reader.tables(choice, place).forEach(table -> step(table, false).ifPresent(steps::add));
                choices.add(steps);
            } else {
                reader.wrongType(place, wanted);
            }
        }
        return new Step.OneOf(choices);
    }

    private static Duration vary(final TableReader reader) {
        return reader.duration("vary").orElse(Duration.ZERO);
    }

    private static Optional<Duration> blink(final TableReader reader) {
        return reader.has("blink") ? Optional.of(positive(reader, "blink")) : Optional.empty();
    }

    private static Duration positive(final TableReader reader, final String key) {
        final Optional<Duration> duration = reader.duration(key);
        if (duration.isPresent() && duration.get().isZero()) {
            final String message = "\"" + key + "\" is no time at all";
            reader.error("out-of-range", key, new Words(message, "nothing would happen", "write a longer time"));
        }
        return duration.orElse(Duration.ofSeconds(1));
    }
}
