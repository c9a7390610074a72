package slackwater.wiring;

import java.util.ArrayList;
import java.util.List;

/** A table in columns of fixed width. Where it would be too wide, the widest columns wrap; nothing is cut off. */
final class TextTable {
    private static final String GAP = "  ";

    private final int widthMax;
    private final List<List<String>> rows = new ArrayList<>();

    TextTable(final int widthMax, final List<String> headings, final List<List<String>> body) {
        this.widthMax = widthMax;
        rows.add(headings);
        rows.addAll(body);
    }

    /** The heading, a rule, and the rows; no blanks at line ends. */
    List<String> lines() {
        final int[] widths = widths();
        final List<String> lines = new ArrayList<>(lines(rows.get(0), widths));
        final List<String> rules = new ArrayList<>();
        for (final int width : widths) {
            rules.add("-".repeat(width));
        }
        lines.addAll(lines(rules, widths));
        rows.stream().skip(1).forEach(row -> lines.addAll(lines(row, widths)));
        return lines;
    }

    /** Headings wrap at every blank, so only their longest word counts. */
    private int[] widths() {
        final int[] widths = new int[rows.get(0).size()];
        int total = -GAP.length();
        for (int column = 0; column < widths.length; column++) {
            for (final String word : rows.get(0).get(column).split(" ", -1)) {
                widths[column] = Math.max(widths[column], word.length());
            }
            for (final List<String> row : rows.subList(1, rows.size())) {
                widths[column] = Math.max(widths[column], row.get(column).length());
            }
            total += widths[column] + GAP.length();
        }
        for (; total > widthMax; total--) {
            widths[widest(widths)]--;
        }
        return widths;
    }

    private static int widest(final int[] widths) {
        int widest = 0;
        for (int column = 1; column < widths.length; column++) {
            if (widths[column] > widths[widest]) {
                widest = column;
            }
        }
        return widest;
    }

    private static List<String> lines(final List<String> row, final int[] widths) {
        final List<List<String>> cells = new ArrayList<>();
        int height = 1;
        for (int column = 0; column < widths.length; column++) {
            final List<String> cell = wrap(row.get(column), widths[column]);
            cells.add(cell);
            height = Math.max(height, cell.size());
        }
        final List<String> lines = new ArrayList<>();
        for (int index = 0; index < height; index++) {
            final StringBuilder line = new StringBuilder();
            for (int column = 0; column < widths.length; column++) {
                final List<String> cell = cells.get(column);
                final String text = index < cell.size() ? cell.get(index) : "";
                line.append(text)
                        .append(" ".repeat(widths[column] - text.length()))
                        .append(GAP);
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    /** Breaks after a blank or a hyphen where there is one, and anywhere else. */
    static List<String> wrap(final String text, final int width) {
        final List<String> lines = new ArrayList<>();
        String rest = text;
        while (rest.length() > width) {
            final int blank = rest.lastIndexOf(' ', width);
            final int hyphen = rest.lastIndexOf('-', width - 1) + 1;
            final int best = Math.max(blank, hyphen);
            final int at = best > 0 ? best : width;
            lines.add(rest.substring(0, at).stripTrailing());
            rest = rest.substring(at).stripLeading();
        }
        lines.add(rest);
        return lines;
    }
}
