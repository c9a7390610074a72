package slackwater.simulator.demo;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import slackwater.model.Output;
import slackwater.model.Point;
import slackwater.simulator.report.Sheet;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Visitor;

/** Both acts side by side on one page that needs nothing beside it: the way with its visitors, the lid, the tank, and what happens. */
public final class DemoPage {
    private static final long EVERY_NS = 5_000_000_000L;
    private static final double NS_PER_S = 1e9;

    private DemoPage() {}

    /** Writes the page to {@code out}, which stays open. */
    public static void write(final TwoActs acts, final Writer out) throws IOException {
        final StringBuilder body = new StringBuilder("<h1>An evening in two acts</h1>\n"
                + "<p class=\"quiet\">The same visitors and the same mishap: on the left a plausible first sketch of a yard, on"
                + " the right the corrected rig. Everything is reckoned; nothing was filmed.</p>\n");
        body.append(resource("demo.html").replace("DATA", data(acts)));
        body.append("<h2>In words</h2>\n<pre>");
        acts.lines().forEach(line -> body.append(Sheet.escaped(line)).append('\n'));
        body.append("</pre>\n");
        out.write(Sheet.page("Slackwater: an evening in two acts", body.toString()));
    }

    /** As JSON; a less-than sign is escaped, so that nothing in it ends the script. */
    private static String data(final TwoActs acts) throws IOException {
        final StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeNumberField("lasts", acts.sketch().plan().lasts().toSeconds());
            json.writeNumberField("opens", acts.sketch().opensNs() / NS_PER_S);
            json.writeStringField(
                    "began", acts.sketch().evening().run().startedAt().moment(0));
            json.writeArrayFieldStart("way");
            for (final Point corner :
                    acts.rig().plan().rig().surroundings().way().orElseThrow().points()) {
                point(corner, json);
            }
            json.writeEndArray();
            crowd(acts.rig().plan().crowd(), json);
            json.writeArrayFieldStart("acts");
            act("Act 1: the sketch", acts.sketch(), TwoActs.SKETCH_LID, json);
            act("Act 2: the sea cave", acts.rig(), TwoActs.RIG_LID, json);
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.toString().replace("<", "\\u003c");
    }

    private static void crowd(final Crowd crowd, final JsonGenerator json) throws IOException {
        json.writeNumberField("every", EVERY_NS / NS_PER_S);
        json.writeArrayFieldStart("visitors");
        for (final Visitor visitor : crowd.visitors()) {
            json.writeStartObject();
            json.writeNumberField("from", tenths(visitor.arrivesNs() / NS_PER_S));
            json.writeNumberField("tall", tenths(visitor.heightM()));
            json.writeArrayFieldStart("at");
            for (long atNs = visitor.arrivesNs(); atNs < visitor.leavesNs() + EVERY_NS; atNs += EVERY_NS) {
                final long here = Math.min(atNs, visitor.leavesNs() - 1);
                json.writeNumber(tenths(visitor.xM(here)));
                json.writeNumber(tenths(visitor.yM(here)));
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void act(final String title, final Act.Seen act, final String lid, final JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("title", title);
        json.writeNumberField(
                "working", act.plan().rig().surroundings().air().orElseThrow().workingPa() / 1e5);
        final Output output = act.plan().rig().output(lid).orElseThrow();
        json.writeArrayFieldStart("lid");
        json.writeNumber(tenths(output.at().orElseThrow().xM()));
        json.writeNumber(tenths(output.at().orElseThrow().yM()));
        json.writeEndArray();
        json.writeArrayFieldStart("tank");
        for (final double bar : act.tankBar()) {
            json.writeNumber(Math.round(bar * 100) / 100.0);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("up");
        for (final Act.Up up : act.lidUpNs()) {
            json.writeNumber(tenths(up.fromNs() / NS_PER_S));
            json.writeNumber(tenths(Math.max(up.untilNs(), up.fromNs() + 500_000_000L) / NS_PER_S));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("events");
        for (final Event event : events(act)) {
            json.writeStartObject();
            json.writeNumberField("at", tenths(event.atNs() / NS_PER_S));
            json.writeStringField("says", event.says());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private record Event(long atNs, String says) {}

    private static List<Event> events(final Act.Seen act) {
        final List<Event> events = new java.util.ArrayList<>();
        event(act.trippedNs(), "The breaker trips.", events);
        event(act.airGoneNs(), "The air is gone.", events);
        event(
                act.frozenNs(),
                String.format(
                        java.util.Locale.ROOT,
                        "The computer freezes; the lid's valve is held for %.2f s.",
                        act.heldS()),
                events);
        events.sort(java.util.Comparator.comparingLong(Event::atNs));
        return events;
    }

    private static void event(final OptionalLong atNs, final String says, final List<Event> events) {
        atNs.ifPresent(at -> events.add(new Event(at, says)));
    }

    private static void point(final Point point, final JsonGenerator json) throws IOException {
        json.writeNumber(tenths(point.xM()));
        json.writeNumber(tenths(point.yM()));
    }

    private static double tenths(final double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static String resource(final String name) throws IOException {
        try (InputStream stream = Objects.requireNonNull(DemoPage.class.getResourceAsStream(name), name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
