package slackwater.simulator.budget;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A budget as one JSON object (RFC 8259) for a script. */
public final class BudgetJson {
    private BudgetJson() {}

    /** One object and nothing else, with a line feed at its end. */
    public static String text(final Budget budget) {
        final StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("rig", budget.rig());
            json.writeStringField("show", budget.show());
            json.writeBooleanField("fits", budget.fits());
            json.writeArrayFieldStart("lines");
            for (final Line line : budget.lines()) {
                line(line, json);
            }
            json.writeEndArray();
            texts("leftOut", budget.leftOut(), json);
            json.writeEndObject();
        } catch (final IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text + "\n";
    }

    private static void line(final Line line, final JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField(
                "group", line.group().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.writeStringField("about", line.about());
        amount("asks", line.asks(), json);
        amount("has", line.has(), json);
        if (line.margin().isPresent()) {
            json.writeNumberField("margin", line.margin().getAsDouble());
        }
        json.writeStringField(
                "verdict",
                line.verdict() == Verdict.TOLD ? "told" : line.verdict().word());
        json.writeStringField("formula", line.formula());
        texts("assumed", line.assumed(), json);
        if (line.advice().isPresent()) {
            json.writeStringField("advice", line.advice().get());
        }
        json.writeEndObject();
    }

    private static void amount(final String name, final Optional<Amount> amount, final JsonGenerator json)
            throws IOException {
        if (amount.isEmpty()) {
            return;
        }
        json.writeObjectFieldStart(name);
        if (Double.isFinite(amount.get().number())) {
            json.writeNumberField("value", amount.get().number());
        } else {
            json.writeStringField("value", amount.get().text());
        }
        json.writeStringField("unit", amount.get().measure().word());
        json.writeEndObject();
    }

    private static void texts(final String name, final List<String> texts, final JsonGenerator json)
            throws IOException {
        json.writeArrayFieldStart(name);
        for (final String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
