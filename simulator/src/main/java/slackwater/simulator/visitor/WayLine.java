package slackwater.simulator.visitor;

import java.util.ArrayList;
import java.util.List;
import slackwater.model.Point;

/** The middle line of the way, measured from its beginning; a place is so far along it and so far to its left. */
final class WayLine {
    /** Below this the corner is so sharp that a mitre would leave the way. */
    private static final double MITRE_MIN = 0.5;

    private final double[] xM;
    private final double[] yM;
    private final double[] alongM;
    private final double[] leftX;
    private final double[] leftY;

    private WayLine(final List<Point> corners) {
        final int count = corners.size();
        xM = corners.stream().mapToDouble(Point::xM).toArray();
        yM = corners.stream().mapToDouble(Point::yM).toArray();
        alongM = new double[count];
        leftX = new double[count - 1];
        leftY = new double[count - 1];
        for (int i = 0; i < count - 1; i++) {
            final double legM = corners.get(i).distanceM(corners.get(i + 1));
            alongM[i + 1] = alongM[i] + legM;
            leftX[i] = -(yM[i + 1] - yM[i]) / legM;
            leftY[i] = (xM[i + 1] - xM[i]) / legM;
        }
    }

    static WayLine of(final List<Point> points) {
        final List<Point> corners = new ArrayList<>();
        for (final Point point : points) {
            if (corners.isEmpty() || corners.get(corners.size() - 1).distanceM(point) > 0) {
                corners.add(point);
            }
        }
        if (corners.size() < 2) {
            throw new IllegalArgumentException("a way needs two different points but has " + points);
        }
        return new WayLine(corners);
    }

    double lengthM() {
        return alongM[alongM.length - 1];
    }

    int corners() {
        return alongM.length;
    }

    double cornerM(final int corner) {
        return alongM[corner];
    }

    Point at(final double fromBeginM, final double toLeftM) {
        int leg = 0;
        while (leg < leftX.length - 1 && alongM[leg + 1] <= fromBeginM) {
            leg++;
        }
        if (leg > 0 && alongM[leg] == fromBeginM) {
            return atCorner(leg, toLeftM);
        }
        final double share = (fromBeginM - alongM[leg]) / (alongM[leg + 1] - alongM[leg]);
        return new Point(
                xM[leg] + share * (xM[leg + 1] - xM[leg]) + toLeftM * leftX[leg],
                yM[leg] + share * (yM[leg + 1] - yM[leg]) + toLeftM * leftY[leg]);
    }

    /** Where the two lines at that distance to the left meet, so that nobody's lane jumps at a corner. */
    private Point atCorner(final int corner, final double toLeftM) {
        final double cosine = leftX[corner - 1] * leftX[corner] + leftY[corner - 1] * leftY[corner];
        final double stretch = 1 / StrictMath.max(MITRE_MIN, 1 + cosine);
        return new Point(
                xM[corner] + toLeftM * stretch * (leftX[corner - 1] + leftX[corner]),
                yM[corner] + toLeftM * stretch * (leftY[corner - 1] + leftY[corner]));
    }
}
