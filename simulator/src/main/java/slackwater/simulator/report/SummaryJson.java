package slackwater.simulator.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/** A run as one JSON object (RFC 8259) for a script. Times are seconds of the run; counts list what never happened too. */
public final class SummaryJson {
    private static final double NS_PER_S = 1e9;

    private SummaryJson() {}

    /** One object and nothing else, with a line feed at its end. */
    public static String text(final Evening evening) {
        final StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            run(evening.run(), json);
            visits(evening.visits(), json);
            seenAhead(evening, json);
            tallies(evening.tallies(), json);
            violations(evening, json);
            json.writeStringField("digest", evening.digest());
            json.writeEndObject();
        } catch (final IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text + "\n";
    }

    private static void run(final Evening.Run run, final JsonGenerator json) throws IOException {
        json.writeStringField("rig", run.rig());
        json.writeStringField("show", run.show());
        json.writeNumberField("seed", run.seed());
        if (run.startedAt().isKnown()) {
            json.writeStringField("startedAt", run.startedAt().text());
        }
        json.writeNumberField("virtualSeconds", run.virtualNs() / NS_PER_S);
        json.writeNumberField("wallSeconds", run.wallNs() / NS_PER_S);
        json.writeNumberField("scans", run.scans());
    }

    private static void visits(final Evening.Visits visits, final JsonGenerator json) throws IOException {
        json.writeNumberField("visitors", visits.visitors());
        json.writeNumberField("groups", visits.groups());
        json.writeNumberField("groupsGreeted", visits.greeted());
        json.writeNumberField("nearMisses", visits.nearMisses());
        json.writeNumberField("startledByMistake", visits.startledByMistake());
    }

    private static void seenAhead(final Evening evening, final JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("seenAhead");
        for (final Evening.SeenAhead each : evening.seenAhead()) {
            json.writeStartObject();
            json.writeStringField("input", each.input());
            json.writeStringField("output", each.output());
            json.writeNumberField("passing", each.passing());
            json.writeNumberField("seen", each.seen());
            json.writeNumberField("medianSeconds", each.medianNs() / NS_PER_S);
            json.writeNumberField("leastSeconds", each.leastNs() / NS_PER_S);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void tallies(final Evening.Tallies tallies, final JsonGenerator json) throws IOException {
        counts("cuesStarted", tallies.cuesStarted(), json);
        counts("startsLost", tallies.startsLost(), json);
        counts("refusals", tallies.refusals(), json);
        counts("actuations", tallies.actuations(), json);
        json.writeObjectFieldStart("longestOn");
        for (final Evening.LongestOn each : tallies.longestOn()) {
            json.writeObjectFieldStart(each.output());
            json.writeNumberField("seconds", each.longestNs() / NS_PER_S);
            if (each.limitNs() > 0) {
                json.writeNumberField("limitSeconds", each.limitNs() / NS_PER_S);
            }
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeNumberField("restShare", tallies.restShare());
    }

    private static void counts(final String name, final Map<String, Long> counts, final JsonGenerator json)
            throws IOException {
        json.writeObjectFieldStart(name);
        for (final Map.Entry<String, Long> each : counts.entrySet()) {
            json.writeNumberField(each.getKey(), each.getValue());
        }
        json.writeEndObject();
    }

    private static void violations(final Evening evening, final JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("violations");
        for (final Evening.Violation each : evening.violations()) {
            json.writeStartObject();
            json.writeStringField("rule", each.rule());
            json.writeStringField("output", each.output());
            json.writeNumberField("at", each.atNs() / NS_PER_S);
            json.writeStringField("detail", each.detail());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
