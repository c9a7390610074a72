package slackwater.simulator.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import slackwater.model.event.Spans;

/** A run in a few lines for a person. */
public final class Summary {
    private static final int MOST_ROWS = 4;
    private static final int MOST_SIGHTS = 2;
    private static final int LABEL = 20;

    private Summary() {}

    /** At most 40 lines, with a line feed after each. */
    public static String text(final Evening evening) {
        final List<String> lines = new ArrayList<>();
        lines.add(title(evening.run()));
        lines.add("");
        visits(evening, lines);
        lines.add("");
        counts("cues started", evening.tallies().cuesStarted(), lines);
        counts("greetings lost", evening.tallies().startsLost(), lines);
        counts("refused, by rule", evening.tallies().refusals(), lines);
        longest(evening.tallies(), lines);
        violations(evening, lines);
        lines.add(row("digest", evening.digest()));
        return String.join("\n", lines) + "\n";
    }

    /** What was run and how long it took, in one line. */
    static String title(final Evening.Run run) {
        final String since =
                run.startedAt().isKnown() ? " from " + run.startedAt().text() : "";
        return run.rig() + ", show " + run.show() + ": " + Spans.text(run.virtualNs()) + since + ", seed " + run.seed()
                + " (" + grouped(run.scans()) + " scans in " + Spans.text(run.wallNs()) + ")";
    }

    private static void visits(final Evening evening, final List<String> lines) {
        final Evening.Visits visits = evening.visits();
        lines.add(row("visitors", grouped(visits.visitors()) + " in " + counted(visits.groups(), "group")));
        lines.add(row("groups greeted", greeted(visits)));
        lines.add(row("near misses", nearMisses(visits)));
        lines.add(row("startled by mistake", grouped(visits.startledByMistake())));
        lines.add(row("all at rest", percent(evening.tallies().restShare()) + " of the evening"));
        evening.seenAhead().stream()
                .limit(MOST_SIGHTS)
                .forEach(each -> lines.add(row("seen ahead", each.input() + " sees " + seenAhead(each))));
    }

    /** How many of those who pass a prop are seen before, and how long before. */
    static String seenAhead(final Evening.SeenAhead each) {
        final String who = grouped(each.seen()) + " of " + grouped(each.passing()) + " before " + each.output();
        return each.seen() == 0
                ? who
                : who + ", by " + Spans.text(each.medianNs()) + " (median; least " + Spans.text(each.leastNs()) + ")";
    }

    static String greeted(final Evening.Visits visits) {
        return grouped(visits.greeted())
                + (visits.groups() == 0
                        ? ""
                        : " (" + percent(visits.greeted() / (double) visits.groups()) + " of the groups)");
    }

    static String nearMisses(final Evening.Visits visits) {
        return visits.nearMisses() == 0
                ? "none: nobody stood where a prop moved"
                : grouped(visits.nearMisses()) + ": somebody stood where a prop moved";
    }

    /** The largest few, the total first. */
    private static void counts(final String label, final Map<String, Long> counts, final List<String> lines) {
        final long total = counts.values().stream().mapToLong(Long::longValue).sum();
        lines.add(row(label, total == 0 ? "none" : grouped(total)));
        final List<Map.Entry<String, Long>> largest = largestFirst(counts);
        largest.stream().limit(MOST_ROWS).forEach(each -> lines.add(numbered(each.getValue(), each.getKey())));
        if (largest.size() > MOST_ROWS) {
            final long rest = largest.stream()
                    .skip(MOST_ROWS)
                    .mapToLong(Map.Entry::getValue)
                    .sum();
            lines.add(numbered(rest, "in " + (largest.size() - MOST_ROWS) + " more"));
        }
    }

    /** Counts above zero, the largest first, equal ones in the rig's order. */
    static List<Map.Entry<String, Long>> largestFirst(final Map<String, Long> counts) {
        return counts.entrySet().stream()
                .filter(each -> each.getValue() > 0)
                .sorted((left, right) -> Long.compare(right.getValue(), left.getValue()))
                .toList();
    }

    private static void longest(final Evening.Tallies tallies, final List<String> lines) {
        final List<Evening.LongestOn> nearest = nearestFirst(tallies.longestOn());
        lines.add(row("longest on", nearest.isEmpty() ? "nothing was energised" : "nearest to its limit first"));
        nearest.stream()
                .limit(MOST_ROWS)
                .forEach(each -> lines.add(numbered(Spans.text(each.longestNs()), longest(each))));
    }

    private static String longest(final Evening.LongestOn each) {
        return each.output() + (each.limitNs() == 0 ? ", no limit" : ", limit " + Spans.text(each.limitNs()));
    }

    /** Outputs that were energised, the one nearest to its limit first, those without a limit last. */
    static List<Evening.LongestOn> nearestFirst(final List<Evening.LongestOn> outputs) {
        return outputs.stream()
                .filter(each -> each.longestNs() > 0)
                .sorted((left, right) -> Double.compare(shareOfLimit(right), shareOfLimit(left)))
                .toList();
    }

    private static double shareOfLimit(final Evening.LongestOn each) {
        return each.limitNs() == 0 ? 0 : each.longestNs() / (double) each.limitNs();
    }

    private static void violations(final Evening evening, final List<String> lines) {
        final List<Evening.Violation> all = evening.violations();
        lines.add(row("violations", all.isEmpty() ? "none: every rule held" : grouped(all.size())));
        all.stream()
                .limit(MOST_ROWS)
                .forEach(each -> lines.add("  ! " + evening.run().startedAt().moment(each.atNs()) + "  " + each.output()
                        + ": " + each.rule() + ", " + each.detail()));
        if (all.size() > MOST_ROWS) {
            lines.add("  ! and " + grouped(all.size() - MOST_ROWS) + " more");
        }
    }

    private static String row(final String label, final String text) {
        return String.format(Locale.ROOT, "%-" + LABEL + "s %s", label, text);
    }

    private static String numbered(final long count, final String what) {
        return numbered(grouped(count), what);
    }

    private static String numbered(final String number, final String what) {
        return String.format(Locale.ROOT, "%" + LABEL + "s  %s", number, what);
    }

    /** A whole number in groups of three digits. */
    static String grouped(final long count) {
        return String.format(Locale.ROOT, "%,d", count).replace(',', ' ');
    }

    static String counted(final long count, final String one) {
        return counted(count, one, one + "s");
    }

    static String counted(final long count, final String one, final String many) {
        return grouped(count) + " " + (count == 1 ? one : many);
    }

    static String percent(final double share) {
        return String.format(Locale.ROOT, "%.1f %%", share * 100);
    }
}
