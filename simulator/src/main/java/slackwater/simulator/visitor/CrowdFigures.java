package slackwater.simulator.visitor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.WalkWay;

/**
 * What a crowd looks like in figures, drawn or measured.
 *
 * @param people how many, dogs included
 * @param medianSpeedMps median of each one's path over their time here, standing included; empty without people
 * @param medianHeadwayS median time between one crossing of the line and the next; empty below two crossings
 * @param medianSpacingM median distance from one who crosses the line to whoever is nearest; empty where all came alone
 * @param movingShare of all the time that people were here, how much they moved; 0 without people
 */
public record CrowdFigures(
        int people,
        OptionalDouble medianSpeedMps,
        OptionalDouble medianHeadwayS,
        OptionalDouble medianSpacingM,
        double movingShare) {

    private static final double NS_PER_S = 1e9;

    /**
     * Looks at a whole crowd.
     *
     * @param line where crossings are counted, each one's first; its height does not matter
     */
    public static CrowdFigures of(final Crowd crowd, final Ray line) {
        final double[] speedsMps = crowd.visitors().stream()
                .mapToDouble(visitor -> visitor.pathM() / visitor.stayS())
                .toArray();
        final long longestNs = crowd.visitors().stream()
                .mapToLong(visitor -> visitor.leavesNs() - visitor.arrivesNs())
                .max()
                .orElse(0);
        final List<Double> spacingsM = new ArrayList<>();
        final List<Long> crossingsNs = new ArrayList<>();
        for (final Visitor visitor : crowd.visitors()) {
            final OptionalLong crossing = crossingNs(visitor, line);
            if (crossing.isPresent()) {
                crossingsNs.add(crossing.getAsLong());
                nearestM(crowd, visitor, crossing.getAsLong(), longestNs).ifPresent(spacingsM::add);
            }
        }
        return new CrowdFigures(
                crowd.size(), median(speedsMps), median(gapsS(crossingsNs)), median(asArray(spacingsM)), moving(crowd));
    }

    /** A line across the middle of the way, as long as the way is wide. */
    public static Ray midLine(final WalkWay way) {
        final WayLine line = WayLine.of(way.points());
        final double middleM = line.lengthM() / 2;
        return new Ray(line.at(middleM, way.widthM() / 2), line.at(middleM, -way.widthM() / 2), 0);
    }

    /** A line across the middle of where a crowd walks, square to the longer side of the box around all ways. */
    public static Ray midLine(final Crowd crowd) {
        double westM = Double.POSITIVE_INFINITY;
        double eastM = Double.NEGATIVE_INFINITY;
        double southM = Double.POSITIVE_INFINITY;
        double northM = Double.NEGATIVE_INFINITY;
        for (final Visitor visitor : crowd.visitors()) {
            for (int i = 0; i < visitor.waypoints(); i++) {
                final double xM = visitor.xM(visitor.waypointNs(i));
                final double yM = visitor.yM(visitor.waypointNs(i));
                westM = Math.min(westM, xM);
                eastM = Math.max(eastM, xM);
                southM = Math.min(southM, yM);
                northM = Math.max(northM, yM);
            }
        }
        if (crowd.isEmpty()) {
            throw new IllegalArgumentException("an empty crowd has no middle");
        }
        final double middleXM = (westM + eastM) / 2;
        final double middleYM = (southM + northM) / 2;
        return eastM - westM > northM - southM
                ? new Ray(new Point(middleXM, southM), new Point(middleXM, northM), 0)
                : new Ray(new Point(westM, middleYM), new Point(eastM, middleYM), 0);
    }

    /** When somebody's middle first crosses a line. */
    static OptionalLong crossingNs(final Visitor visitor, final Ray line) {
        for (int i = 0; i < visitor.waypoints() - 1; i++) {
            final long fromNs = visitor.waypointNs(i);
            final long toNs = visitor.waypointNs(i + 1);
            final double fromM = beside(line, visitor.xM(fromNs), visitor.yM(fromNs));
            final double toM = beside(line, visitor.xM(toNs), visitor.yM(toNs));
            if (fromM != toM && fromM * toM <= 0) {
                final long crossNs = fromNs + Math.round(fromM / (fromM - toM) * (toNs - fromNs));
                if (isBetweenEnds(line, visitor.xM(crossNs), visitor.yM(crossNs))) {
                    return OptionalLong.of(crossNs);
                }
            }
        }
        return OptionalLong.empty();
    }

    /** On which side of the line, and how far times the line's length. */
    private static double beside(final Ray line, final double xM, final double yM) {
        return (line.to().xM() - line.from().xM()) * (yM - line.from().yM())
                - (line.to().yM() - line.from().yM()) * (xM - line.from().xM());
    }

    private static boolean isBetweenEnds(final Ray line, final double xM, final double yM) {
        final double alongXM = line.to().xM() - line.from().xM();
        final double alongYM = line.to().yM() - line.from().yM();
        final double dot = (xM - line.from().xM()) * alongXM + (yM - line.from().yM()) * alongYM;
        return dot >= 0 && dot <= alongXM * alongXM + alongYM * alongYM;
    }

    /** Looks back only as far as somebody can have been here, so that a long evening stays quick. */
    private static OptionalDouble nearestM(
            final Crowd crowd, final Visitor visitor, final long nowNs, final long longestNs) {
        double nearestM = Double.POSITIVE_INFINITY;
        for (int i = crowd.firstAfter(nowNs) - 1; i >= 0 && crowd.visitor(i).arrivesNs() >= nowNs - longestNs; i--) {
            final Visitor other = crowd.visitor(i);
            if (other.id() != visitor.id() && other.isHere(nowNs)) {
                final double dxM = other.xM(nowNs) - visitor.xM(nowNs);
                final double dyM = other.yM(nowNs) - visitor.yM(nowNs);
                nearestM = Math.min(nearestM, Math.sqrt(dxM * dxM + dyM * dyM));
            }
        }
        return Double.isInfinite(nearestM) ? OptionalDouble.empty() : OptionalDouble.of(nearestM);
    }

    private static double moving(final Crowd crowd) {
        double movesS = 0;
        double staysS = 0;
        for (final Visitor visitor : crowd.visitors()) {
            movesS += visitor.fasterThanS(Sight.STANDING_MPS);
            staysS += visitor.stayS();
        }
        return staysS == 0 ? 0 : movesS / staysS;
    }

    private static double[] gapsS(final List<Long> momentsNs) {
        final long[] sortedNs =
                momentsNs.stream().mapToLong(Long::longValue).sorted().toArray();
        final double[] gapsS = new double[Math.max(0, sortedNs.length - 1)];
        for (int i = 0; i < gapsS.length; i++) {
            gapsS[i] = (sortedNs[i + 1] - sortedNs[i]) / NS_PER_S;
        }
        return gapsS;
    }

    private static double[] asArray(final List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static OptionalDouble median(final double[] values) {
        if (values.length == 0) {
            return OptionalDouble.empty();
        }
        final double[] sorted = values.clone();
        Arrays.sort(sorted);
        final int upper = sorted.length / 2;
        return OptionalDouble.of(sorted.length % 2 == 1 ? sorted[upper] : (sorted[upper - 1] + sorted[upper]) / 2);
    }
}
