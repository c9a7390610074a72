package slackwater.model.file;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Contact;
import slackwater.model.Facts;
import slackwater.model.Level;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Point;
import slackwater.model.Return;
import slackwater.model.finding.Findings.Words;
import slackwater.model.kind.OutputKind;
import slackwater.model.quantity.Dimension;

/** Reads {@code [output.NAME]}. */
final class OutputTable {
    private final TableReader reader;

    private OutputTable(final TableReader reader) {
        this.reader = reader;
    }

    static Optional<Output> read(final String name, final TableReader reader) {
        final List<String> words = reader.context().kinds().outputWords();
        final String word = reader.required(
                "kind", "the kind decides which safety rules apply", Context.listed("add kind = one of: ", words, ""));
        final Optional<OutputKind> kind = reader.context().kinds().output(word);
        if (kind.isEmpty() && !word.isEmpty()) {
            reader.unknownKind(word, words);
        }
        return kind.map(known -> new OutputTable(reader).output(name, known));
    }

    private Output output(final String name, final OutputKind kind) {
        final String zone = Items.zone(reader);
        final String controller = Items.controller(reader);
        final OptionalInt pin = Items.pin(reader, "pin");
        final Level level = reader.word("active", Choices.of(Level.class)).orElse(Level.HIGH);
        final Contact contact =
                reader.word("contact", Choices.of(Contact.class)).orElse(Contact.NORMALLY_OPEN);
        final Output.Rest rest = rest();
        final Limits limits = limits();
        final Load load = LoadKeys.load(reader);
        final Optional<Point> at = reader.point("at");
        final double reachM = reader.si("reach", Dimension.LENGTH);
        if (reader.has("reach") && !reader.has("at")) {
            reader.error(
                    "missing-key",
                    "reach",
                    new Words(
                            reader.title() + " says \"reach\" but not \"at\"",
                            "a reach without a place touches nobody on the plan",
                            "add at = [\"8 m\", \"3 m\"]"));
        }
        final Output.Feedback feedback =
                reader.word("feedback", Choices.of(Output.Feedback.class)).orElse(Output.Feedback.NONE);
        final Optional<String> unguarded = reader.text("unguarded");
        final Facts facts = Items.facts(reader, kind.keys());
        reader.finish();
        return new Output(
                name,
                kind,
                zone,
                controller,
                pin,
                level,
                contact,
                rest,
                limits,
                load,
                at,
                reachM,
                feedback,
                unguarded,
                facts);
    }

    private Output.Rest rest() {
        final Map<String, Return> words = Choices.of(Return.class);
        return new Output.Rest(
                reader.word("on-power-loss", words),
                reader.word("on-air-loss", words),
                reader.text("restraint"),
                reader.duration("time-to-rest"));
    }

    private Limits limits() {
        return new Limits(
                reader.duration("longest-on"),
                reader.duration("shortest-off").orElse(Duration.ZERO),
                reader.parsed("starts", Texts.STARTS, Texts::starts));
    }
}
