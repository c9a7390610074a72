package slackwater.model.finding;

import java.util.List;
import java.util.Locale;

/** Findings as a person reads them in a terminal: place, message, the line with a caret, why, and what to write instead. */
public final class FindingsPrinter {
    private static final int WIDEST = 100;
    private static final int BEFORE_CARET = 40;
    private static final int SURROGATE_FREE = 0xFFFF;
    private static final String CUT = "...";

    private FindingsPrinter() {}

    /** All findings and the closing line. */
    public static String text(final List<Finding> findings, final int filesRead) {
        final StringBuilder text = new StringBuilder();
        for (final Finding finding : findings) {
            text.append(text(finding)).append('\n');
        }
        return text.append(closing(findings, filesRead)).toString();
    }

    /** One finding, each of its lines ended. */
    public static String text(final Finding finding) {
        final StringBuilder text = new StringBuilder();
        finding.at()
                .ifPresent(at -> text.append(at.file())
                        .append(':')
                        .append(at.line())
                        .append(':')
                        .append(at.column())
                        .append(": "));
        text.append(finding.severity().name().toLowerCase(Locale.ROOT))
                .append(' ')
                .append(finding.code())
                .append(": ")
                .append(printable(finding.message()))
                .append('\n');
        finding.at().ifPresent(at -> appendLine(text, at, finding.lineText()));
        text.append("  why: ").append(printable(finding.why())).append('\n');
        return text.append("  fix: ")
                .append(printable(finding.fix()))
                .append('\n')
                .toString();
    }

    private static String closing(final List<Finding> findings, final int filesRead) {
        final long errors = findings.stream().filter(Finding::isError).count();
        final String counts = counted(filesRead, "file") + " read, " + counted(errors, "error") + ", "
                + counted(findings.size() - errors, "warning") + ".";
        return counts + (errors > 0 ? " Nothing was started; all outputs stay at rest.\n" : "\n");
    }

    private static String counted(final long count, final String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** A long line is cut to what is around the caret; the caret stays under what it points at. */
    private static void appendLine(final StringBuilder text, final Position at, final String lineText) {
        final int[] line = printable(lineText).codePoints().toArray();
        final int caret = Math.min(Math.max(0, at.column() - 1), line.length);
        final int from = line.length <= WIDEST ? 0 : Math.max(0, caret - BEFORE_CARET);
        final int to = Math.min(line.length, from + WIDEST);
        final String before = from > 0 ? CUT : "";
        final String after = to < line.length ? CUT : "";
        final int length = Math.max(1, Math.min(at.length(), to - caret));
        text.append(String.format(Locale.ROOT, "%5d | ", at.line()))
                .append(before)
                .append(new String(line, from, to - from))
                .append(after)
                .append('\n')
                .append("      | ")
                .append(" ".repeat(before.length() + caret - from))
                .append("^".repeat(length))
                .append('\n');
    }

    /** A tab becomes one space, so that columns stay as they are counted; nothing in a file can steer the terminal. */
    private static String printable(final String text) {
        final StringBuilder printable = new StringBuilder();
        text.codePoints()
                .map(point -> point == '\t' ? ' ' : Character.isISOControl(point) || isFormat(point) ? '?' : point)
                .forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private static boolean isFormat(final int point) {
        return Character.getType(point) == Character.FORMAT
                || (point <= SURROGATE_FREE && Character.isSurrogate((char) point));
    }
}
