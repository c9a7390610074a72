package slackwater.simulator.report;

import java.util.ArrayList;
import java.util.List;

/** Marks of the abnormal under a lane: a sign for each, and the word once where the signs stop. */
final class LaneMarks {
    private static final double SIGNS_APART_PX = 5;
    private static final double WORD_ROOM_PX = 112;
    private static final int MOST_HINTS = 200;

    private final Axis axis;

    LaneMarks(final Axis axis) {
        this.axis = axis;
    }

    /** What can be marked. */
    enum Kind {
        VIOLATION("violation", "violation"),
        REFUSAL("refusal", "refused");

        private final String style;
        private final String word;

        Kind(final String style, final String word) {
            this.style = style;
            this.word = word;
        }

        /** The sign around a point: a filled diamond, or a hollow triangle that points down. */
        private String sign(final double xPx, final int middlePx) {
            return this == VIOLATION
                    ? "M" + Svg.px(xPx) + " " + (middlePx - 7) + "l6 7l-6 7l-6 -7z"
                    : "M" + Svg.px(xPx - 5) + " " + (middlePx - 5) + "h10l-5 9z";
        }
    }

    /** Something to mark. */
    record Mark(long atNs, String text) {}

    /** The marks of one kind, in ascending time, on a row of their own. */
    String of(final Kind kind, final List<Mark> marks, final int middlePx) {
        final List<Mark> seen =
                marks.stream().filter(each -> axis.holds(each.atNs())).toList();
        final StringBuilder signs = new StringBuilder();
        final List<Integer> ends = new ArrayList<>();
        double lastPx = Double.NEGATIVE_INFINITY;
        for (int mark = 0; mark < seen.size(); mark++) {
            final double xPx = axis.px(seen.get(mark).atNs());
            if (xPx - lastPx >= SIGNS_APART_PX) {
                lastPx = xPx;
                signs.append(sign(kind, seen.get(mark), middlePx, mark < MOST_HINTS));
            }
            final boolean isEnd =
                    mark + 1 == seen.size() || axis.px(seen.get(mark + 1).atNs()) - xPx >= WORD_ROOM_PX;
            if (isEnd) {
                ends.add(mark);
            }
        }
        return signs + words(kind, seen, ends, middlePx);
    }

    private String sign(final Kind kind, final Mark mark, final int middlePx, final boolean hasHint) {
        final String path = Svg.path(kind.style, kind.sign(axis.px(mark.atNs()), middlePx));
        return hasHint ? "<g><title>" + Svg.escaped(mark.text()) + "</title>" + path + "</g>" : path;
    }

    private String words(final Kind kind, final List<Mark> seen, final List<Integer> ends, final int middlePx) {
        final StringBuilder words = new StringBuilder();
        int first = 0;
        for (final int end : ends) {
            final int count = end - first + 1;
            final String text = kind.word + (count == 1 ? "" : " ×" + count);
            words.append(Svg.words("says-" + kind.style, axis.px(seen.get(end).atNs()) + 10, middlePx + 4, text));
            first = end + 1;
        }
        return words.toString();
    }
}
