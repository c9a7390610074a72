package slackwater.wiring;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import slackwater.wiring.WiringFacts.Line;
import slackwater.wiring.WiringFacts.Rest;
import slackwater.wiring.WiringFacts.Unwired;

/** The facts as one JSON object, keys always in the same order. */
final class SheetJson {
    private final String rig;
    private final List<WiringFacts> sheets;

    SheetJson(final String rig, final List<WiringFacts> sheets) {
        this.rig = rig;
        this.sheets = sheets;
    }

    String render() {
        final StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("rig", rig);
            json.writeArrayFieldStart("controllers");
            for (final WiringFacts facts : sheets) {
                controller(json, facts);
            }
            json.writeEndArray();
            texts(json, "cautions", BenchAdvice.cautions(sheets));
            texts(
                    json,
                    "guides",
                    BenchAdvice.guides().stream().map(BenchAdvice.Guide::path).toList());
            json.writeEndObject();
        } catch (final IOException broken) {
            throw new UncheckedIOException("writing JSON into memory", broken);
        }
        return text.toString();
    }

    private static void controller(final JsonGenerator json, final WiringFacts facts) throws IOException {
        json.writeStartObject();
        json.writeStringField("controller", facts.controller().name());
        json.writeStringField("board", facts.controller().board().word());
        json.writeArrayFieldStart("lines");
        for (final Line line : facts.lines()) {
            line(json, line);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("not-wired");
        for (final Unwired unwired : facts.unwired()) {
            json.writeStartObject();
            json.writeStringField("name", unwired.thing().name());
            json.writeStringField("kind", unwired.thing().kind());
            json.writeStringField("way", unwired.thing().role().direction());
            json.writeStringField("table", unwired.table());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectFieldStart("supplies");
        for (final String signal : List.of("3V3", "5V", "GND")) {
            json.writeArrayFieldStart(signal);
            for (final int pin : facts.headerPinsOf(signal)) {
                json.writeNumber(pin);
            }
            json.writeEndArray();
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void line(final JsonGenerator json, final Line line) throws IOException {
        json.writeStartObject();
        json.writeNumberField("header-pin", line.pin().header());
        json.writeNumberField("gpio", line.pin().gpio());
        json.writeStringField("way", line.thing().role().direction());
        json.writeStringField("name", line.thing().name());
        json.writeStringField("kind", line.thing().kind());
        json.writeStringField("pull-at-reset", PinTable.words(line.pin().atReset()));
        if (line.signal().asked().isPresent()) {
            json.writeStringField(
                    "pull-asked", PinTable.words(line.signal().asked().get()));
        }
        json.writeStringField("active", PinTable.active(line));
        if (line.rest().isPresent()) {
            rest(json, line.rest().get());
        }
        texts(json, "notes", line.notes());
        json.writeEndObject();
    }

    private static void rest(final JsonGenerator json, final Rest rest) throws IOException {
        json.writeStringField(
                "contact", rest.contact().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        if (rest.level().isPresent()) {
            json.writeStringField("level-at-rest", PinTable.words(rest.level().get()));
        }
        json.writeStringField("power-on-to-start", rest.boot().verdict().words());
        json.writeStringField("reason", rest.boot().reason());
        json.writeStringField("load-at-rest", rest.load());
    }

    private static void texts(final JsonGenerator json, final String field, final List<String> texts)
            throws IOException {
        json.writeArrayFieldStart(field);
        for (final String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
