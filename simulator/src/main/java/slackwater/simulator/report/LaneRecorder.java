package slackwater.simulator.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Collects the changes of a run's lanes in growing arrays; a value that repeats is not kept. */
public final class LaneRecorder {
    private static final int FIRST_ROOM = 1 << 10;

    private final List<Lane> lanes;
    private final double[] lastValue;
    private final List<Lanes.Refused> refused = new ArrayList<>();
    private int[] laneOf = new int[FIRST_ROOM];
    private long[] atNs = new long[FIRST_ROOM];
    private double[] value = new double[FIRST_ROOM];
    private int count;

    public LaneRecorder(final List<Lane> lanes) {
        this.lanes = List.copyOf(lanes);
        this.lastValue = new double[lanes.size()];
        Arrays.fill(lastValue, Double.NaN);
    }

    /** A lane of bits is on or off from this moment, counted in nanoseconds from the run's start. */
    public void bit(final int lane, final long changedAtNs, final boolean isOn) {
        append(lane, Lane.Value.BIT, changedAtNs, isOn ? 1 : 0);
    }

    /** A lane of words says this word from this moment. */
    public void word(final int lane, final long changedAtNs, final int word) {
        if (word < 0 || word >= lanes.get(lane).words().size()) {
            throw new IllegalArgumentException("word " + word + " of " + lanes.get(lane));
        }
        append(lane, Lane.Value.WORD, changedAtNs, word);
    }

    /** A quantity has this value from this moment. */
    public void number(final int lane, final long changedAtNs, final double quantity) {
        if (!Double.isFinite(quantity)) {
            throw new IllegalArgumentException("number " + quantity + " of " + lanes.get(lane));
        }
        append(lane, Lane.Value.NUMBER, changedAtNs, quantity + 0.0);
    }

    /** A demand on a lane's output was refused; the text is what a person reads beside the mark. */
    public void refused(final int lane, final long refusedAtNs, final String text) {
        refused.add(new Lanes.Refused(lane, refusedAtNs, text));
    }

    /** What was recorded so far, as a run that ended at this moment. */
    public Lanes until(final long endNs) {
        if (count > 0 && endNs < atNs[count - 1]) {
            throw new IllegalArgumentException("endNs=" + endNs + " < last change " + atNs[count - 1]);
        }
        return new Lanes(
                lanes,
                new Lanes.Changes(
                        Arrays.copyOf(laneOf, count), Arrays.copyOf(atNs, count), Arrays.copyOf(value, count)),
                List.copyOf(refused),
                endNs);
    }

    private void append(final int lane, final Lane.Value kind, final long changedAtNs, final double next) {
        if (lanes.get(lane).value() != kind) {
            throw new IllegalArgumentException("a " + kind + " for " + lanes.get(lane));
        }
        final long lastAtNs = count == 0 ? 0 : atNs[count - 1];
        if (changedAtNs < lastAtNs) {
            throw new IllegalArgumentException("change at " + changedAtNs + " ns after one at " + lastAtNs + " ns");
        }
        if (lastValue[lane] == next) {
            return;
        }
        if (count == atNs.length) {
            grow();
        }
        lastValue[lane] = next;
        laneOf[count] = lane;
        atNs[count] = changedAtNs;
        value[count] = next;
        count++;
    }

    private void grow() {
        final int room = count * 2;
        laneOf = Arrays.copyOf(laneOf, room);
        atNs = Arrays.copyOf(atNs, room);
        value = Arrays.copyOf(value, room);
    }
}
