package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** A budget as a table for a terminal, at most 120 columns wide. */
public final class BudgetText {
    private static final int ABOUT = 62;
    private static final int FIGURE = 14;
    private static final int WIDTH = 116;
    private static final int LEAST_SHOWN = 3;

    private BudgetText() {}

    /**
     * The table, what does not fit and how it would, what was assumed, what could not be reckoned.
     *
     * @param isWhole also the cables, contacts and pins that fit with ease
     */
    public static String of(final Budget budget, final boolean isWhole) {
        final List<String> lines = new ArrayList<>();
        lines.add(budget.rig() + ", show " + budget.show() + ": what it asks against what it has");
        for (final Line.Group group : Line.Group.values()) {
            if (!budget.of(group).isEmpty()) {
                lines.add("");
                lines.add(heading(group));
                final List<Line> shown = isWhole ? budget.of(group) : worthTelling(group, budget.of(group));
                shown.forEach(line -> lines.add(row(line, notes(budget).indexOf(noteOf(line)) + 1)));
                if (shown.size() < budget.of(group).size()) {
                    lines.add("  and " + (budget.of(group).size() - shown.size()) + " more that fit; --all shows them");
                }
            }
        }
        section("Assumed, because nobody said it:", numbered(notes(budget)), lines);
        section("Short:", advice(budget, Verdict.SHORT), lines);
        section("Look at:", advice(budget, Verdict.LOOK), lines);
        section("Left out:", budget.leftOut().stream().map(each -> "  " + each).toList(), lines);
        lines.add("");
        lines.add(verdict(budget));
        return String.join("\n", lines) + "\n";
    }

    /** Of many alike only those that do not fit, and the three with the least margin. */
    private static List<Line> worthTelling(final Line.Group group, final List<Line> lines) {
        if (group != Line.Group.CABLES && group != Line.Group.CONTACTS && group != Line.Group.PINS) {
            return lines;
        }
        final List<Line> tightest = lines.stream()
                .sorted(Comparator.comparingDouble(line -> line.margin().orElse(1)))
                .limit(LEAST_SHOWN)
                .toList();
        return lines.stream()
                .filter(line -> line.verdict() != Verdict.FITS || tightest.contains(line))
                .toList();
    }

    private static String heading(final Line.Group group) {
        return String.format(
                Locale.ROOT,
                "%-" + ABOUT + "s%" + FIGURE + "s%" + FIGURE + "s%8s",
                group.word().toUpperCase(Locale.ROOT),
                "asks",
                "has",
                "margin");
    }

    private static String row(final Line line, final int note) {
        final String mark = note > 0 ? " [" + note + "]" : "";
        return String.format(
                        Locale.ROOT,
                        "  %-" + (ABOUT - 2) + "s%" + FIGURE + "s%" + FIGURE + "s%8s  %s%s",
                        line.about(),
                        line.asks().map(Amount::text).orElse(""),
                        line.has().map(Amount::text).orElse(""),
                        margin(line.margin()),
                        line.verdict().word(),
                        mark)
                .stripTrailing();
    }

    static String margin(final OptionalDouble margin) {
        return margin.isEmpty()
                ? ""
                : String.format(Locale.ROOT, "%.0f %%", Math.max(-9_999, 100 * margin.getAsDouble()));
    }

    private static List<String> notes(final Budget budget) {
        return budget.lines().stream()
                .map(BudgetText::noteOf)
                .filter(note -> !note.isEmpty())
                .distinct()
                .toList();
    }

    private static String noteOf(final Line line) {
        return String.join("; ", line.assumed());
    }

    private static List<String> numbered(final List<String> notes) {
        final List<String> rows = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            rows.addAll(wrapped("  [" + (i + 1) + "] ", notes.get(i)));
        }
        return rows;
    }

    private static List<String> advice(final Budget budget, final Verdict verdict) {
        final List<String> rows = new ArrayList<>();
        for (final Line line : budget.lines()) {
            if (line.verdict() == verdict) {
                final String words =
                        line.about() + line.advice().map(each -> ": " + each).orElse("");
                rows.addAll(wrapped("  ", words + " (" + line.formula() + ")"));
            }
        }
        return rows;
    }

    private static void section(final String heading, final List<String> rows, final List<String> to) {
        if (!rows.isEmpty()) {
            to.add("");
            to.add(heading);
            to.addAll(rows);
        }
    }

    private static List<String> wrapped(final String before, final String words) {
        final List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder(before);
        for (final String word : words.split(" ", -1)) {
            if (row.length() + word.length() >= WIDTH && !row.toString().isBlank()) {
                rows.add(row.toString().stripTrailing());
                row = new StringBuilder(" ".repeat(before.length() + 2));
            }
            row.append(word).append(' ');
        }
        rows.add(row.toString().stripTrailing());
        return rows;
    }

    private static String verdict(final Budget budget) {
        final long looks = count(budget, Verdict.LOOK);
        return verdictOf(budget) + (looks == 0 ? "." : "; " + looks + " to look at.")
                + "\nThe figures are of a model: measure before you trust them, and keep to local codes.";
    }

    /** What it all comes to; what was left out is never said to fit. */
    static String verdictOf(final Budget budget) {
        final long shortLines = count(budget, Verdict.SHORT);
        if (shortLines > 0) {
            return shortLines + " of " + budget.lines().size() + " lines fall short";
        }
        return budget.leftOut().isEmpty()
                ? "It fits"
                : "What could be reckoned fits, " + budget.leftOut().size() + " left out";
    }

    private static long count(final Budget budget, final Verdict verdict) {
        return budget.lines().stream().filter(line -> line.verdict() == verdict).count();
    }
}
