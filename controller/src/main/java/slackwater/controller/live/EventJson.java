package slackwater.controller.live;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import slackwater.model.event.Event;

/** One event as one line of JSON: its kind, its moment, its own facts, and the line for a person. */
final class EventJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private EventJson() {}

    static String line(final Event event) {
        return object(json -> {
            json.writeNumberField("atNs", event.atNs());
            json.writeStringField("kind", event.getClass().getSimpleName());
            facts(event, json);
            json.writeStringField("text", event.text());
        });
    }

    /** The first line of a run. */
    static String heading(final Heading heading) {
        return object(json -> {
            json.writeStringField("kind", "Begun");
            json.writeStringField("rig", heading.rig());
            json.writeStringField("show", heading.show());
            json.writeStringField("controller", heading.controller());
            json.writeNumberField("bootId", heading.bootId());
            json.writeNumberField("seed", heading.seed());
            json.writeStringField("rigSha256", heading.rigSum());
            json.writeNumberField("epochMs", heading.epochMs());
        });
    }

    /**
     * What a run was of.
     *
     * @param rigSum SHA-256 of the rig's files
     * @param epochMs wall time at its begin, right or not
     */
    record Heading(String rig, String show, String controller, long bootId, long seed, String rigSum, long epochMs) {}

    private interface Fields {
        void write(JsonGenerator json) throws IOException;
    }

    private static String object(final Fields fields) {
        final StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            fields.write(json);
            json.writeEndObject();
        } catch (final IOException impossible) {
            throw new UncheckedIOException("a text in memory can always be written", impossible);
        }
        return text.toString();
    }

    private static void facts(final Event event, final JsonGenerator json) throws IOException {
        if (event instanceof Event.Switched switched) {
            json.writeStringField("output", switched.output());
            json.writeBooleanField("isEnergised", switched.isEnergised());
        } else if (event instanceof Event.Refused refused) {
            json.writeStringField("output", refused.refusal().output());
            json.writeStringField("rule", refused.refusal().rule());
        } else if (event instanceof Event.Limited limited) {
            json.writeStringField("output", limited.output());
            json.writeStringField("limit", limited.limit());
        } else if (event instanceof Event.CueStarted started) {
            json.writeStringField("cue", started.cue());
            json.writeStringField("by", started.startedBy());
        } else if (event instanceof Event.CueEnded ended) {
            json.writeStringField("cue", ended.cue());
        } else if (event instanceof Event.StartLost lost) {
            json.writeStringField("cue", lost.cue());
        } else if (event instanceof Event.ModeChanged changed) {
            json.writeStringField("zone", changed.zone());
            json.writeStringField("mode", changed.to().name());
        } else if (event instanceof Event.Latched latched) {
            json.writeStringField("what", latched.what());
        } else if (event instanceof Event.Cleared cleared) {
            json.writeStringField("what", cleared.what());
        } else if (event instanceof Event.Commanded commanded) {
            json.writeStringField("request", commanded.request());
            json.writeBooleanField("isTaken", commanded.isTaken());
        } else if (event instanceof Event.InputDoubted doubted) {
            json.writeStringField("input", doubted.input());
        } else if (event instanceof Event.Dropped dropped) {
            json.writeNumberField("count", dropped.count());
        }
    }
}
