package slackwater.simulator.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The shape of one lane's signal. Sorts differ in shape, so that no colour is needed to tell them apart. */
final class LaneShapes {
    private static final double COUNT_ROOM_PX = 34;
    private static final double LETTER_PX = 7.5;
    private static final int PIN_PX = 14;
    private static final int INPUT_PX = 10;
    private static final int MODE_PX = 17;
    private static final int GAUGE_PX = 26;

    private final Axis axis;
    private final double gapPx;

    LaneShapes(final Axis axis, final double gapPx) {
        this.axis = axis;
        this.gapPx = gapPx;
    }

    /** The signal, standing on a base line. */
    String of(final Lane lane, final Lanes.Track track, final int basePx) {
        return switch (lane.value()) {
            case BIT -> bits(lane.sort(), Blocks.of(track, axis, gapPx), basePx);
            case WORD -> words(lane, track, basePx);
            case NUMBER -> Svg.path("gauge", gauge(track, basePx));
        };
    }

    private String bits(final Lane.Sort sort, final List<Blocks.Block> blocks, final int basePx) {
        final StringBuilder single = new StringBuilder();
        final StringBuilder several = new StringBuilder();
        final StringBuilder counts = new StringBuilder();
        for (final Blocks.Block block : blocks) {
            (block.pulses() == 1 ? single : several).append(outline(sort, block, basePx));
            if (block.pulses() > 1 && block.widthPx() >= COUNT_ROOM_PX) {
                final double middlePx = (block.leftPx() + block.rightPx()) / 2;
                counts.append(Svg.words("count", middlePx, basePx - 3, "×" + block.pulses()));
            }
        }
        final String style = sort.name().toLowerCase(Locale.ROOT);
        return Svg.path(style, single.toString()) + Svg.path(style + " several", several.toString()) + counts;
    }

    private static String outline(final Lane.Sort sort, final Blocks.Block block, final int basePx) {
        return switch (sort) {
            case PIN -> Svg.box(block.leftPx(), basePx - PIN_PX, block.widthPx(), PIN_PX);
            // The outline is a pixel wide, and half of it lies outside of its path.
            case INPUT, MODE, GAUGE ->
                Svg.box(block.leftPx() + 0.5, basePx - INPUT_PX - 0.5, Math.max(0.1, block.widthPx() - 1), INPUT_PX);
            case CUE -> "M" + Svg.px(block.leftPx()) + " " + (basePx - 6) + "h" + Svg.px(block.widthPx());
        };
    }

    private String words(final Lane lane, final Lanes.Track track, final int basePx) {
        final StringBuilder bands = new StringBuilder();
        final StringBuilder words = new StringBuilder();
        double lastPx = Double.NEGATIVE_INFINITY;
        for (int change = 0; change < track.size(); change++) {
            if (track.untilNs(change) <= axis.fromNs() || track.fromNs(change) >= axis.untilNs()) {
                continue;
            }
            final double leftPx = axis.px(track.fromNs(change));
            final double widthPx = axis.px(track.untilNs(change)) - leftPx;
            if (leftPx - lastPx >= gapPx || widthPx >= gapPx) {
                bands.append(Svg.box(leftPx + 0.5, basePx - MODE_PX + 0.5, Math.max(0.1, widthPx), MODE_PX - 1));
                lastPx = leftPx;
            }
            words.append(word(lane.words().get((int) track.value(change)), leftPx, widthPx, basePx));
        }
        return Svg.path("mode", bands.toString()) + words;
    }

    /** As much of a word as its band holds, or nothing where that would not be understood. */
    private static String word(final String word, final double leftPx, final double widthPx, final int basePx) {
        final int room = (int) ((widthPx - 8) / LETTER_PX);
        final String seen = room >= word.length() ? word : room >= 4 ? word.substring(0, room - 1) + "…" : "";
        return seen.isEmpty() ? "" : Svg.words("word", leftPx + 4, basePx - 4, seen);
    }

    /** Lowest and highest value in each column of pixels, so that no short dip is lost. */
    private String gauge(final Lanes.Track track, final int basePx) {
        final int columns = axis.widthPx() + 1;
        final double[] low = new double[columns];
        final double[] high = new double[columns];
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        Arrays.fill(high, Double.NEGATIVE_INFINITY);
        for (int change = 0; change < track.size(); change++) {
            final boolean isSeen = track.untilNs(change) >= axis.fromNs() && track.fromNs(change) <= axis.untilNs();
            final int first = (int) axis.px(track.fromNs(change)) - axis.leftPx();
            final int last = isSeen ? (int) axis.px(track.untilNs(change)) - axis.leftPx() : first - 1;
            for (int column = first; column <= last; column++) {
                low[column] = Math.min(low[column], track.value(change));
                high[column] = Math.max(high[column], track.value(change));
            }
        }
        return line(low, high, basePx);
    }

    private String line(final double[] low, final double[] high, final int basePx) {
        final double least = Arrays.stream(low).min().orElse(0);
        final double most = Arrays.stream(high).max().orElse(0);
        final double perUnitPx = most > least ? GAUGE_PX / (most - least) : 0;
        final StringBuilder data = new StringBuilder();
        for (int column = 0; column < low.length; column++) {
            if (low[column] > high[column]) {
                continue;
            }
            final boolean isSame = column > 0
                    && column + 1 < low.length
                    && low[column] == low[column - 1]
                    && high[column] == high[column - 1]
                    && low[column] == high[column];
            if (!isSame) {
                final String topPx = Svg.px(basePx - (high[column] - least) * perUnitPx);
                final String bottomPx = Svg.px(basePx - (low[column] - least) * perUnitPx);
                data.append(data.length() == 0 ? "M" : "L")
                        .append(axis.leftPx() + column)
                        .append(' ')
                        .append(topPx);
                data.append(topPx.equals(bottomPx) ? "" : "V" + bottomPx);
            }
        }
        return data.toString();
    }
}
