package slackwater.simulator.visitor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slackwater.model.Point;

/** One member's place along the way over time: straight between knots, times in seconds since the group's arrival. */
final class Course {
    private static final double NS_PER_S = 1e9;

    /** At most this share of a run's speed must be walking, or it is no run. */
    private static final double RUN_OVER_WALK = 1.1;

    private record Knot(double atS, double alongM) {}

    private final List<Knot> knots;

    private Course(final List<Knot> knots) {
        this.knots = List.copyOf(knots);
    }

    /**
     * What of an outing one member does, from when they step on the way themselves.
     *
     * @param behindM how far they walk behind the front rank
     */
    static Course of(final Outing outing, final double lengthM, final double behindM) {
        final double paceMps = outing.paceMps();
        final List<Knot> front = new ArrayList<>();
        front.add(new Knot(0, 0));
        final double stopS = outing.stopM() / paceMps;
        if (outing.stayS() > 0) {
            front.add(new Knot(stopS, outing.stopM()));
            front.add(new Knot(stopS + outing.stayS(), outing.stopM()));
        }
        final double farS = outing.farthestM() / paceMps + outing.stayS();
        if (outing.stayS() == 0 || outing.stopM() < outing.farthestM()) {
            front.add(new Knot(farS, outing.farthestM()));
        }
        if (outing.comesBack()) {
            front.add(new Knot(farS + outing.farthestM() / paceMps, 0));
        }
        return new Course(onTheWay(front, lengthM, behindM));
    }

    /** What of the group's course this member walks between the way's ends. */
    private static List<Knot> onTheWay(final List<Knot> front, final double lengthM, final double behindM) {
        final List<Knot> inside = new ArrayList<>();
        for (int i = 0; i < front.size() - 1; i++) {
            final Knot from = new Knot(front.get(i).atS(), front.get(i).alongM() - behindM);
            final Knot to = new Knot(front.get(i + 1).atS(), front.get(i + 1).alongM() - behindM);
            final boolean isOutside = StrictMath.max(from.alongM(), to.alongM()) < 0
                    || StrictMath.min(from.alongM(), to.alongM()) > lengthM;
            if (isOutside) {
                continue;
            }
            if (inside.isEmpty()) {
                inside.add(held(from, to, lengthM));
            }
            inside.add(held(to, from, lengthM));
        }
        return inside;
    }

    /** A leg's end, moved along the leg to where it crosses an end of the way. */
    private static Knot held(final Knot end, final Knot other, final double lengthM) {
        final double heldM = StrictMath.max(0, StrictMath.min(lengthM, end.alongM()));
        if (heldM == end.alongM()) {
            return end;
        }
        final double share = (heldM - end.alongM()) / (other.alongM() - end.alongM());
        return new Knot(end.atS() + share * (other.atS() - end.atS()), heldM);
    }

    /**
     * The same course with a run in its first leg: ahead of the others, then waiting for them.
     *
     * @param fromShare where in the first leg the run begins
     */
    Course runningAhead(final double fromShare, final double runM, final double speedMps) {
        final Knot begin = knots.get(0);
        final Knot end = knots.get(1);
        final double walkMps = (end.alongM() - begin.alongM()) / (end.atS() - begin.atS());
        final double fromM = begin.alongM() + fromShare * (end.alongM() - begin.alongM());
        final double toM = StrictMath.min(fromM + runM, end.alongM());
        if (!(speedMps > RUN_OVER_WALK * walkMps) || toM <= fromM) {
            return this;
        }
        final double fromS = begin.atS() + (fromM - begin.alongM()) / walkMps;
        final List<Knot> run = new ArrayList<>();
        run.add(begin);
        run.add(new Knot(fromS, fromM));
        run.add(new Knot(fromS + (toM - fromM) / speedMps, toM));
        run.add(new Knot(begin.atS() + (toM - begin.alongM()) / walkMps, toM));
        run.addAll(knots.subList(1, knots.size()));
        return new Course(run);
    }

    Visitor walkedBy(final Visitor.Body body, final WayLine line, final double toLeftM, final long arrivesNs) {
        final Track track = new Track(line, toLeftM, arrivesNs);
        track.add(knots.get(0));
        for (int i = 0; i < knots.size() - 1; i++) {
            track.addLeg(knots.get(i), knots.get(i + 1));
        }
        return track.visitor(body);
    }

    /** Waypoints on the plan; corners of the way are put in where a leg passes them. */
    private static final class Track {
        private final WayLine line;
        private final double toLeftM;
        private final long arrivesNs;
        private long[] atNs = new long[8];
        private double[] xM = new double[8];
        private double[] yM = new double[8];
        private int count;

        Track(final WayLine line, final double toLeftM, final long arrivesNs) {
            this.line = line;
            this.toLeftM = toLeftM;
            this.arrivesNs = arrivesNs;
        }

        void addLeg(final Knot from, final Knot to) {
            final boolean isOutward = to.alongM() > from.alongM();
            for (int i = 0; i < line.corners(); i++) {
                final double cornerM = line.cornerM(isOutward ? i : line.corners() - 1 - i);
                final double share = (cornerM - from.alongM()) / (to.alongM() - from.alongM());
                if (share > 0 && share < 1) {
                    add(new Knot(from.atS() + share * (to.atS() - from.atS()), cornerM));
                }
            }
            add(to);
        }

        /** Legs too short for the clock's nanosecond are left out. */
        void add(final Knot knot) {
            final long nowNs = arrivesNs + StrictMath.round(knot.atS() * NS_PER_S);
            if (count > 0 && nowNs <= atNs[count - 1]) {
                return;
            }
            if (count == atNs.length) {
                atNs = Arrays.copyOf(atNs, 2 * count);
                xM = Arrays.copyOf(xM, 2 * count);
                yM = Arrays.copyOf(yM, 2 * count);
            }
            final Point at = line.at(knot.alongM(), toLeftM);
            atNs[count] = nowNs;
            xM[count] = at.xM();
            yM[count] = at.yM();
            count++;
        }

        Visitor visitor(final Visitor.Body body) {
            return Visitor.of(body, Arrays.copyOf(atNs, count), Arrays.copyOf(xM, count), Arrays.copyOf(yM, count));
        }
    }
}
