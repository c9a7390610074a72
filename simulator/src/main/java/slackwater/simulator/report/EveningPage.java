package slackwater.simulator.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The evening as one page that needs nothing beside it: what happened in words and numbers, then every lane drawn. */
public final class EveningPage {
    /** A page that people send by mail stays below this; a denser evening is drawn more coarsely. */
    public static final int LARGEST_BYTES = 1_500_000;

    private static final double COARSEST_PX = 64;

    private EveningPage() {}

    /** Writes the page to {@code out}, which stays open. */
    public static void write(final Evening evening, final Lanes lanes, final Writer out) throws IOException {
        final Story story = new Story(evening, lanes);
        double gapPx = 1;
        String page = page(evening, story, gapPx);
        while (page.getBytes(StandardCharsets.UTF_8).length >= LARGEST_BYTES && gapPx < COARSEST_PX) {
            gapPx *= 2;
            page = page(evening, story, gapPx);
        }
        out.write(page);
    }

    private static String page(final Evening evening, final Story story, final double gapPx) {
        final String title = evening.run().rig() + ", " + evening.run().show();
        return Sheet.page(
                title + ": the evening",
                PageTables.of(evening) + "<main>\n" + lanes(story, gapPx) + zooms(story, gapPx) + "</main>\n"
                        + "<footer><p class=\"quiet\">Digest of every pin level (SHA-256): <span class=\"digest\">"
                        + Svg.escaped(evening.digest()) + "</span></p></footer>\n");
    }

    private static String lanes(final Story story, final double gapPx) {
        if (story.endNs() <= 0 || story.size() == 0) {
            return "<h2>The lanes</h2>\n<p>Nothing was recorded.</p>\n";
        }
        final Axis axis = new Axis(0, story.endNs(), LanePicture.LEFT_PX, LanePicture.PLOT_PX);
        final List<Integer> all = IntStream.range(0, story.size()).boxed().toList();
        final String clock = story.startedAt().isKnown() ? "local time" : "time since the start";
        return "<h2>The lanes, in " + clock + "</h2>\n" + PageTables.legend() + "<div class=\"scroll\">\n"
                + new LanePicture(story, axis, gapPx).draw(all, "Every lane over the whole evening") + "</div>\n";
    }

    private static String zooms(final Story story, final double gapPx) {
        final List<String> parts = new ArrayList<>();
        for (final long startNs : Zooms.of(story)) {
            final Axis axis = new Axis(startNs, startNs + Zooms.lengthNs(), LanePicture.LEFT_PX, LanePicture.PLOT_PX);
            final String span = story.startedAt().moment(startNs) + " to "
                    + story.startedAt().moment(axis.untilNs());
            final boolean isBad = IntStream.range(0, story.size())
                    .anyMatch(lane -> story.violations(lane).stream().anyMatch(mark -> axis.holds(mark.atNs())));
            parts.add("<details><summary>" + span
                    + (isBad ? " <span class=\"bad-word\">with a violation</span>" : "") + "</summary>\n"
                    + "<div class=\"scroll\">\n"
                    + new LanePicture(story, axis, gapPx)
                            .draw(LanePicture.worthDrawing(story, axis), "The lanes that change from " + span)
                    + "</div>\n</details>\n");
        }
        return parts.isEmpty()
                ? ""
                : "<h2>Five minutes at a time</h2>\n<p class=\"quiet\">Around violations, and where most happened. "
                        + "Lanes in which nothing happens are left out.</p>\n" + String.join("", parts);
    }
}
