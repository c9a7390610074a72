package slackwater.simulator.report;

import java.util.List;
import java.util.Map;
import slackwater.model.event.Spans;

/** What stands above the lanes: the verdict, the evening's numbers, and the list of what went wrong. */
final class PageTables {
    private static final int MOST_ROWS = 12;
    private static final String VIOLATION_SIGN = "M20 2l6 7l-6 7l-6 -7z";
    private static final String REFUSAL_SIGN = "M15 4h10l-5 9z";
    private static final int MOST_VIOLATIONS = 200;

    private PageTables() {}

    static String of(final Evening evening) {
        final Evening.Tallies tallies = evening.tallies();
        return "<header>\n<h1>" + Svg.escaped(evening.run().rig()) + "</h1>\n<p class=\"quiet\">"
                + Svg.escaped(Summary.title(evening.run())) + "</p>\n" + verdict(evening) + "</header>\n"
                + violations(evening)
                + "<div class=\"tables\">\n" + visits(evening) + counts("Cues started", tallies.cuesStarted())
                + counts("Greetings lost, and why", tallies.startsLost())
                + counts("Refused, by rule", tallies.refusals()) + longest(tallies)
                + counts("Energised, by output", tallies.actuations()) + "</div>\n";
    }

    private static String verdict(final Evening evening) {
        final int count = evening.violations().size();
        return count == 0
                ? "<p class=\"verdict\">No rule was broken.</p>\n"
                : "<p class=\"verdict bad\">" + sign("violation", VIOLATION_SIGN) + " "
                        + Summary.counted(count, "violation") + ": something happened that must not happen.</p>\n";
    }

    private static String violations(final Evening evening) {
        if (evening.violations().isEmpty()) {
            return "";
        }
        final StringBuilder rows = new StringBuilder("<table><caption>Violations</caption>\n<tr>"
                + "<th class=\"fixed\" scope=\"col\">when</th><th class=\"fixed\" scope=\"col\">output</th>"
                + "<th scope=\"col\">rule, and what was seen</th></tr>\n");
        evening.violations().stream()
                .limit(MOST_VIOLATIONS)
                .forEach(each -> rows.append("<tr><td class=\"fixed\">")
                        .append(evening.run().startedAt().moment(each.atNs()))
                        .append("</td><td class=\"fixed bad-word\">")
                        .append(Svg.escaped(each.output()))
                        .append("</td><td>")
                        .append(Svg.escaped(each.rule() + ": " + each.detail()))
                        .append("</td></tr>\n"));
        final int more = evening.violations().size() - MOST_VIOLATIONS;
        return rows + "</table>\n" + (more > 0 ? "<p>And " + Summary.grouped(more) + " more.</p>\n" : "");
    }

    private static String visits(final Evening evening) {
        final Evening.Visits visits = evening.visits();
        return "<table><caption>The evening</caption>\n"
                + row("Visitors", Summary.grouped(visits.visitors()))
                + row("Groups", Summary.grouped(visits.groups()))
                + row("Groups greeted", Summary.greeted(visits))
                + row("Near misses: in a moving prop's reach", Summary.grouped(visits.nearMisses()))
                + row("Startled by mistake", Summary.grouped(visits.startledByMistake()))
                + row("Everything at rest", Summary.percent(evening.tallies().restShare()))
                + "</table>\n"
                + seenAhead(evening);
    }

    private static String seenAhead(final Evening evening) {
        if (evening.seenAhead().isEmpty()) {
            return "";
        }
        final StringBuilder text =
                new StringBuilder("<table><caption>Seen ahead: how many, and the median</caption>\n");
        evening.seenAhead()
                .forEach(each -> text.append(row(
                        each.input() + " before " + each.output(),
                        Summary.grouped(each.seen()) + " of " + Summary.grouped(each.passing())
                                + (each.seen() == 0 ? "" : ", " + Spans.text(each.medianNs())))));
        return text.append("</table>\n").toString();
    }

    private static String counts(final String caption, final Map<String, Long> counts) {
        final List<Map.Entry<String, Long>> rows = Summary.largestFirst(counts);
        final StringBuilder text = new StringBuilder("<table><caption>" + caption + "</caption>\n");
        rows.stream()
                .limit(MOST_ROWS)
                .forEach(each -> text.append(row(each.getKey(), Summary.grouped(each.getValue()))));
        if (rows.size() > MOST_ROWS) {
            final long rest =
                    rows.stream().skip(MOST_ROWS).mapToLong(Map.Entry::getValue).sum();
            text.append(row((rows.size() - MOST_ROWS) + " more", Summary.grouped(rest)));
        }
        return text + (rows.isEmpty() ? row("none", "") : "") + "</table>\n";
    }

    private static String longest(final Evening.Tallies tallies) {
        final StringBuilder text =
                new StringBuilder("<table><caption>Longest on, nearest to its limit first</caption>\n");
        final List<Evening.LongestOn> rows = Summary.nearestFirst(tallies.longestOn());
        rows.stream()
                .limit(MOST_ROWS)
                .forEach(each -> text.append(row(
                        each.output(),
                        Spans.text(each.longestNs())
                                + (each.limitNs() == 0 ? ", no limit" : " of " + Spans.text(each.limitNs())))));
        return text + (rows.isEmpty() ? row("nothing was energised", "") : "") + "</table>\n";
    }

    private static String row(final String label, final String number) {
        return "<tr><th scope=\"row\">" + Svg.escaped(label) + "</th><td class=\"number\">" + Svg.escaped(number)
                + "</td></tr>\n";
    }

    /** One of each shape with its word, and the stripes that all pictures share. */
    static String legend() {
        return "<svg class=\"shared\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs><pattern id=\"several\" "
                + "width=\"4\" height=\"4\" patternUnits=\"userSpaceOnUse\"><path class=\"stripe\" d=\"M0 4L4 0\"/>"
                + "</pattern></defs></svg>\n<p class=\"legend\">"
                + entry("mode", "M1 1h38v14h-38z", "mode of a zone")
                + entry("cue", "M5 9h30", "cue plays")
                + entry("input", "M3.5 4.5h12v10h-12zM22.5 4.5h14v10h-14z", "input is high")
                + entry("pin", "M3 2h12v14h-12zM22 2h14v14h-14z", "output is energised")
                + entry("pin several", "M3 2h34v14h-34z", "several, too close to draw")
                + entry("violation", VIOLATION_SIGN, "violation")
                + entry("refusal", REFUSAL_SIGN, "refused") + "</p>\n";
    }

    private static String entry(final String style, final String data, final String word) {
        return "<span>" + sign(style, data) + word + "</span>\n";
    }

    private static String sign(final String style, final String data) {
        return "<svg width=\"40\" height=\"18\" aria-hidden=\"true\"><path class=\"" + style + "\" d=\"" + data
                + "\"/></svg>";
    }
}
