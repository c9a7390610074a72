package slackwater.simulator.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

/**
 * Writes lanes as a four-state value change dump (IEEE 1364-2005, clause 18), for any waveform viewer. Names no date, so
 * that the same run gives the same bytes. One unit of time is a nanosecond, so that a recording replays exactly.
 */
public final class VcdWriter {
    private static final String NL = "\n";

    private VcdWriter() {}

    /** Streams everything to {@code out}, which stays open. */
    public static void write(final Lanes lanes, final Writer out) throws IOException {
        out.write("$version Slackwater $end\n$timescale 1 ns $end\n");
        for (final Lane lane : lanes.lanes()) {
            if (lane.value() == Lane.Value.WORD) {
                out.write(words(lane));
            }
        }
        declare(lanes.lanes(), out);
        out.write("$enddefinitions $end\n#0\n$dumpvars\n");
        final int first = initial(lanes, out);
        out.write("$end\n");
        changes(lanes, first, out);
    }

    private static String words(final Lane lane) {
        final StringBuilder text = new StringBuilder("$comment ")
                .append(VcdNames.identifier(lane.group()))
                .append('.')
                .append(VcdNames.identifier(lane.name()))
                .append(':');
        for (int word = 0; word < lane.words().size(); word++) {
            // A dollar sign could read as the end of the comment.
            text.append(' ')
                    .append(word)
                    .append('=')
                    .append(lane.words().get(word).replace('$', '_'));
        }
        return text.append(" $end\n").toString();
    }

    private static void declare(final List<Lane> lanes, final Writer out) throws IOException {
        final List<String> names = VcdNames.of(lanes);
        final List<String> groups = lanes.stream().map(Lane::group).distinct().toList();
        for (final String group : groups) {
            out.write("$scope module " + VcdNames.identifier(group) + " $end\n");
            for (int lane = 0; lane < lanes.size(); lane++) {
                if (lanes.get(lane).group().equals(group)) {
                    out.write("$var " + type(lanes.get(lane)) + " " + VcdNames.code(lane) + " " + names.get(lane));
                    out.write(" $end\n");
                }
            }
            out.write("$upscope $end\n");
        }
    }

    private static String type(final Lane lane) {
        return switch (lane.value()) {
            case BIT -> "wire 1";
            case WORD -> "reg " + lane.bits();
            case NUMBER -> "real 64";
        };
    }

    /** What holds at time 0, unknown where nothing was said; answers the first change that comes later. */
    private static int initial(final Lanes lanes, final Writer out) throws IOException {
        final double[] value = new double[lanes.lanes().size()];
        final boolean[] isKnown = new boolean[value.length];
        int change = 0;
        while (change < lanes.size() && lanes.atNs(change) == 0) {
            value[lanes.laneOf(change)] = lanes.value(change);
            isKnown[lanes.laneOf(change)] = true;
            change++;
        }
        for (int lane = 0; lane < value.length; lane++) {
            final Lane each = lanes.lanes().get(lane);
            out.write(isKnown[lane] ? value(each, value[lane], lane) : unknown(each, lane));
        }
        return change;
    }

    private static void changes(final Lanes lanes, final int first, final Writer out) throws IOException {
        long writtenNs = 0;
        for (int change = first; change < lanes.size(); change++) {
            if (lanes.atNs(change) != writtenNs) {
                writtenNs = lanes.atNs(change);
                out.write("#" + writtenNs + NL);
            }
            final int lane = lanes.laneOf(change);
            out.write(value(lanes.lanes().get(lane), lanes.value(change), lane));
        }
        if (lanes.endNs() != writtenNs) {
            out.write("#" + lanes.endNs() + NL);
        }
    }

    private static String unknown(final Lane lane, final int index) {
        return switch (lane.value()) {
            case BIT -> "x" + VcdNames.code(index) + NL;
            case WORD -> "bx " + VcdNames.code(index) + NL;
            // A real has no unknown (18.2.2).
            case NUMBER -> "r0 " + VcdNames.code(index) + NL;
        };
    }

    private static String value(final Lane lane, final double value, final int index) {
        return switch (lane.value()) {
            case BIT -> (value == 0 ? "0" : "1") + VcdNames.code(index) + NL;
            case WORD -> "b" + Integer.toBinaryString((int) value) + " " + VcdNames.code(index) + NL;
            case NUMBER -> "r" + value + " " + VcdNames.code(index) + NL;
        };
    }
}
