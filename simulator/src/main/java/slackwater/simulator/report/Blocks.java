package slackwater.simulator.report;

import java.util.ArrayList;
import java.util.List;

/** Turns a lane of bits into blocks to draw; pulses that are closer than a gap become one block that counts them. */
final class Blocks {
    private Blocks() {}

    /**
     * What is drawn as one.
     *
     * @param leftPx left edge, in pixels
     * @param rightPx right edge, at least a pixel further
     * @param pulses how often the lane went on in it
     */
    record Block(double leftPx, double rightPx, int pulses) {
        double widthPx() {
            return rightPx - leftPx;
        }
    }

    static List<Block> of(final Lanes.Track track, final Axis axis, final double gapPx) {
        final List<Block> blocks = new ArrayList<>();
        for (int change = 0; change < track.size(); change++) {
            final boolean isSeen = track.value(change) != 0
                    && track.untilNs(change) > axis.fromNs()
                    && track.fromNs(change) < axis.untilNs();
            if (isSeen) {
                final double leftPx = axis.px(track.fromNs(change));
                final double rightPx = Math.max(leftPx + 1, axis.px(track.untilNs(change)));
                add(blocks, new Block(leftPx, rightPx, 1), gapPx);
            }
        }
        return List.copyOf(blocks);
    }

    private static void add(final List<Block> blocks, final Block next, final double gapPx) {
        final int last = blocks.size() - 1;
        if (last >= 0 && next.leftPx() - blocks.get(last).rightPx() < gapPx) {
            final Block before = blocks.get(last);
            blocks.set(
                    last,
                    new Block(
                            before.leftPx(),
                            Math.max(before.rightPx(), next.rightPx()),
                            before.pulses() + next.pulses()));
        } else {
            blocks.add(next);
        }
    }
}
