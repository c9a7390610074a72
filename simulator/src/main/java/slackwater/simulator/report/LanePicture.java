package slackwater.simulator.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A stretch of a run as one picture: a clock axis, and the lanes of each group under its name. */
final class LanePicture {
    static final int WIDTH_PX = 1360;
    static final int LEFT_PX = 250;
    static final int PLOT_PX = 1000;
    private static final int AXIS_PX = 26;
    private static final int GROUP_PX = 32;
    private static final int LANE_PX = 22;
    private static final int GAUGE_PX = 36;
    private static final int MARKS_PX = 19;
    private static final int NAME_PX = 62;
    private static final int LONGEST_NAME = 24;

    private final Story story;
    private final Axis axis;
    private final LaneShapes shapes;
    private final LaneMarks marks;
    private final StringBuilder body = new StringBuilder();
    private int yPx = AXIS_PX;

    LanePicture(final Story story, final Axis axis, final double gapPx) {
        this.story = story;
        this.axis = axis;
        this.shapes = new LaneShapes(axis, gapPx);
        this.marks = new LaneMarks(axis);
    }

    /** The picture of these lanes, with a sentence for those who cannot see it. */
    String draw(final List<Integer> lanes, final String label) {
        final List<String> groups =
                lanes.stream().map(lane -> story.lane(lane).group()).distinct().toList();
        for (final String group : groups) {
            yPx += GROUP_PX;
            body.append(Svg.words("group", 0, yPx - 8, group));
            body.append(Svg.path("rule", "M0 " + (yPx - 2) + "H" + WIDTH_PX));
            lanes.stream()
                    .filter(lane -> story.lane(lane).group().equals(group))
                    .sorted(Comparator.comparing(lane -> story.lane(lane).sort()))
                    .forEach(this::lane);
        }
        final int heightPx = yPx + 8;
        return "<svg viewBox=\"0 0 " + WIDTH_PX + " " + heightPx + "\" width=\"" + WIDTH_PX + "\" height=\"" + heightPx
                + "\" role=\"img\" aria-label=\"" + Svg.escaped(label) + "\">\n" + ticks(heightPx) + body + "</svg>\n";
    }

    private void lane(final int index) {
        final Lane lane = story.lane(index);
        final Lanes.Track track = story.track(index);
        yPx += lane.value() == Lane.Value.NUMBER ? GAUGE_PX : LANE_PX;
        final int basePx = yPx - 3;
        body.append(Svg.words("sort", 4, basePx - 2, lane.sort().name().toLowerCase(Locale.ROOT)));
        body.append(Svg.words("name", NAME_PX, basePx - 2, shortened(lane.name())));
        body.append(Svg.path("base", "M" + LEFT_PX + " " + (basePx + 0.5) + "h" + PLOT_PX));
        body.append(shapes.of(lane, track, basePx));
        body.append(Svg.words("sort", axis.rightPx() + 8, basePx - 2, story.said(index, axis)));
        marks(LaneMarks.Kind.VIOLATION, story.violations(index));
        marks(LaneMarks.Kind.REFUSAL, story.refusals(index));
    }

    private void marks(final LaneMarks.Kind kind, final List<LaneMarks.Mark> all) {
        if (all.stream().anyMatch(each -> axis.holds(each.atNs()))) {
            yPx += MARKS_PX;
            body.append(marks.of(kind, all, yPx - MARKS_PX / 2 - 1));
        }
    }

    private String ticks(final int heightPx) {
        final StringBuilder lines = new StringBuilder();
        final StringBuilder words = new StringBuilder();
        final long stepNs = axis.stepNs();
        for (long atNs = axis.firstTickNs(story.startedAt()); atNs <= axis.untilNs(); atNs += stepNs) {
            lines.append('M')
                    .append(Svg.px(axis.px(atNs)))
                    .append(' ')
                    .append(AXIS_PX - 6)
                    .append('V')
                    .append(heightPx);
            words.append(Svg.words(
                    "tick", axis.px(atNs), AXIS_PX - 10, story.startedAt().tick(atNs, stepNs)));
        }
        return Svg.path("rule", lines.toString()) + words;
    }

    private static String shortened(final String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "…";
    }

    /** The lanes that change in a stretch or carry a mark in it, and the modes, without which neither is understood. */
    static List<Integer> worthDrawing(final Story story, final Axis axis) {
        final List<Integer> lanes = new ArrayList<>();
        for (int lane = 0; lane < story.size(); lane++) {
            final boolean isMarked = Stream.concat(story.violations(lane).stream(), story.refusals(lane).stream())
                    .anyMatch(mark -> axis.holds(mark.atNs()));
            if (isMarked || story.lane(lane).sort() == Lane.Sort.MODE || isChanging(story.track(lane), axis)) {
                lanes.add(lane);
            }
        }
        return List.copyOf(lanes);
    }

    private static boolean isChanging(final Lanes.Track track, final Axis axis) {
        for (int change = 0; change < track.size(); change++) {
            if (track.fromNs(change) > axis.fromNs() && axis.holds(track.fromNs(change))) {
                return true;
            }
        }
        return false;
    }
}
