package slackwater.controller.app;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import slackwater.model.finding.Finding;
import slackwater.model.finding.Position;

/** Findings as one JSON object, for machines. */
final class FindingsJson {
    private FindingsJson() {}

    static String text(final List<Finding> findings, final int filesRead) {
        final StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeNumberField("filesRead", filesRead);
            json.writeNumberField(
                    "errors", findings.stream().filter(Finding::isError).count());
            json.writeArrayFieldStart("findings");
            for (final Finding finding : findings) {
                write(json, finding);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (final IOException impossible) {
            throw new UncheckedIOException("a text in memory can always be written", impossible);
        }
        return text.toString();
    }

    private static void write(final JsonGenerator json, final Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
        json.writeStringField("code", finding.code());
        if (finding.at().isPresent()) {
            final Position at = finding.at().get();
            json.writeStringField("file", at.file());
            json.writeNumberField("line", at.line());
            json.writeNumberField("column", at.column());
        }
        json.writeStringField("message", finding.message());
        json.writeStringField("why", finding.why());
        json.writeStringField("fix", finding.fix());
        json.writeEndObject();
    }
}
