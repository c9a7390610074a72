package slackwater.simulator.report;

import java.util.List;

/** A run's lanes and their changes, in ascending time. Immutable. */
public final class Lanes {
    private final List<Lane> lanes;
    private final Changes changes;
    private final List<Refused> refused;
    private final long endNs;

    /** A demand that was refused, on the lane of its output. */
    public record Refused(int lane, long atNs, String text) {}

    Lanes(final List<Lane> lanes, final Changes changes, final List<Refused> refused, final long endNs) {
        this.lanes = lanes;
        this.changes = changes;
        this.refused = refused;
        this.endNs = endNs;
    }

    public List<Lane> lanes() {
        return lanes;
    }

    public List<Refused> refused() {
        return refused;
    }

    /** When the run ended, counted from its start. */
    public long endNs() {
        return endNs;
    }

    /** How many changes there are, over all lanes. */
    public int size() {
        return changes.atNs.length;
    }

    /** The lane that a change belongs to. */
    public int laneOf(final int change) {
        return changes.laneOf[change];
    }

    /** When a change happened. */
    public long atNs(final int change) {
        return changes.atNs[change];
    }

    /** What the lane says from then on: 0 or 1, an index of its words, or a quantity. */
    public double value(final int change) {
        return changes.value[change];
    }

    /** One lane's own changes. */
    public Track track(final int lane) {
        int count = 0;
        for (final int each : changes.laneOf) {
            count += each == lane ? 1 : 0;
        }
        final long[] atNs = new long[count];
        final double[] value = new double[count];
        int next = 0;
        for (int change = 0; change < changes.laneOf.length; change++) {
            if (changes.laneOf[change] == lane) {
                atNs[next] = changes.atNs[change];
                value[next++] = changes.value[change];
            }
        }
        return new Track(atNs, value, endNs);
    }

    /** Three columns of one table. */
    static final class Changes {
        private final int[] laneOf;
        private final long[] atNs;
        private final double[] value;

        Changes(final int[] laneOf, final long[] atNs, final double[] value) {
            this.laneOf = laneOf;
            this.atNs = atNs;
            this.value = value;
        }
    }

    /** One lane's changes; each value holds until the next one, the last until the run's end. */
    public static final class Track {
        private final long[] atNs;
        private final double[] value;
        private final long endNs;

        Track(final long[] atNs, final double[] value, final long endNs) {
            this.atNs = atNs;
            this.value = value;
            this.endNs = endNs;
        }

        public int size() {
            return atNs.length;
        }

        /** From when a value held. */
        public long fromNs(final int change) {
            return atNs[change];
        }

        /** Until when a value held. */
        public long untilNs(final int change) {
            return change + 1 < atNs.length ? atNs[change + 1] : endNs;
        }

        public double value(final int change) {
            return value[change];
        }
    }
}
