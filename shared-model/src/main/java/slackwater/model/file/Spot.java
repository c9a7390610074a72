package slackwater.model.file;

import org.tomlj.TomlPosition;
import slackwater.model.finding.Position;

/**
 * Finds what to underline. The parser tells where a key, a heading or the gap before an array's element begins; a second look
 * at that line finds the value. Columns are counted in Unicode code points, as the parser counts them.
 */
final class Spot {
    private final SourceFile file;
    private int line;
    private int[] points;
    private int next;

    private Spot(final SourceFile file, final TomlPosition from) {
        this.file = file;
        this.line = from.line();
        this.points = pointsOf(file.line(line));
        this.next = Math.max(0, from.column() - 1);
    }

    /** The heading or the key at a place. */
    static Position key(final SourceFile file, final TomlPosition from) {
        final Spot spot = new Spot(file, from);
        return spot.upTo(spot.isAt('[') ? spot.endOfHeading() : spot.endOfKey());
    }

    /** The value that belongs to the key at a place; the heading when there is a heading. */
    static Position valueOfKey(final SourceFile file, final TomlPosition from) {
        final Spot spot = new Spot(file, from);
        if (spot.isAt('[')) {
            return spot.upTo(spot.endOfHeading());
        }
        final int keyStart = spot.next;
        while (spot.next < spot.points.length && !spot.isAt('=')) {
            spot.next = spot.endOfToken(spot.next);
        }
        if (spot.next >= spot.points.length) {
            spot.next = keyStart;
            return spot.upTo(spot.endOfKey());
        }
        spot.next++;
        spot.skipBlanks();
        return spot.upTo(spot.endOfValue());
    }

    /** The element of an array that begins at a place or after the blanks and comments there. */
    static Position element(final SourceFile file, final TomlPosition from) {
        final Spot spot = new Spot(file, from);
        spot.skipGap();
        return spot.upTo(spot.endOfValue());
    }

    private static int[] pointsOf(final String text) {
        return text.codePoints().toArray();
    }

    private Position upTo(final int end) {
        return new Position(file.name(), line, next + 1, Math.max(1, end - next));
    }

    private boolean isAt(final int point) {
        return next < points.length && points[next] == point;
    }

    private void skipBlanks() {
        while (isAt(' ') || isAt('\t')) {
            next++;
        }
    }

    private void skipGap() {
        final int fromLine = line;
        final int fromNext = next;
        skipBlanks();
        while ((next >= points.length || isAt('#')) && line < file.lines().size()) {
            line++;
            points = pointsOf(file.line(line));
            next = 0;
            skipBlanks();
        }
        if (next >= points.length) {
            line = fromLine;
            points = pointsOf(file.line(line));
            next = fromNext;
        }
    }

    private int endOfHeading() {
        int end = next;
        while (end < points.length && points[end] != ']') {
            end = endOfToken(end);
        }
        while (end < points.length && points[end] == ']') {
            end++;
        }
        return end;
    }

    private int endOfKey() {
        int end = next;
        while (end < points.length && " \t=]}".indexOf(points[end]) < 0) {
            end = endOfToken(end);
        }
        return end;
    }

    private int endOfValue() {
        if (!isAt('[') && !isAt('{')) {
            int end = next;
            while (end < points.length && " \t,]}#".indexOf(points[end]) < 0) {
                end = endOfToken(end);
            }
            return end;
        }
        int depth = 0;
        int end = next;
        while (end < points.length && points[end] != '#') {
            depth += isOneOf(points[end], "[{") ? 1 : isOneOf(points[end], "]}") ? -1 : 0;
            end = endOfToken(end);
            if (depth == 0) {
                return end;
            }
        }
        while (end > next && isOneOf(points[end - 1], " \t")) {
            end--;
        }
        return end;
    }

    private static boolean isOneOf(final int point, final String points) {
        return points.indexOf(point) >= 0;
    }

    /** One character, or a whole quoted text. */
    private int endOfToken(final int from) {
        final int quote = points[from];
        if (quote != '"' && quote != '\'') {
            return from + 1;
        }
        int end = from + 1;
        while (end < points.length && points[end] != quote) {
            end += quote == '"' && points[end] == '\\' ? 2 : 1;
        }
        return Math.min(points.length, end + 1);
    }
}
