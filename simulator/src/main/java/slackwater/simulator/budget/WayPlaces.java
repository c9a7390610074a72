package slackwater.simulator.budget;

import java.util.List;
import java.util.OptionalDouble;
import slackwater.model.Input;
import slackwater.model.Point;
import slackwater.model.WalkWay;
import slackwater.simulator.visitor.Sight;

/** Places along the middle line of the way, in metres from its beginning. */
final class WayPlaces {
    private static final double STEP_M = 0.02;

    /** A body between a child's and an adult's height (common practice, no source). */
    private static final double BODY_M = 1.4;

    private final List<Point> corners;
    private final double lengthM;

    WayPlaces(final WalkWay way) {
        corners = way.points();
        double sumM = 0;
        for (int i = 1; i < corners.size(); i++) {
            sumM += corners.get(i - 1).distanceM(corners.get(i));
        }
        lengthM = sumM;
    }

    /** Where somebody who comes from the beginning is seen for the first time; empty where nobody ever is. */
    OptionalDouble firstSeenM(final Input.Sees sees) {
        for (double atM = 0; atM <= lengthM; atM += STEP_M) {
            final Point at = point(atM);
            final boolean isSeen = sees.field()
                            .map(field -> Sight.isSeenBy(field, at.xM(), at.yM()))
                            .orElse(false)
                    || sees.ray()
                            .map(ray -> Sight.blocks(ray, at.xM(), at.yM(), BODY_M))
                            .orElse(false);
            if (isSeen) {
                return OptionalDouble.of(atM);
            }
        }
        return OptionalDouble.empty();
    }

    /** The place of the way that is nearest to a point. */
    double nearestM(final Point to) {
        double bestM = 0;
        for (double atM = 0; atM <= lengthM; atM += STEP_M) {
            if (point(atM).distanceM(to) < point(bestM).distanceM(to)) {
                bestM = atM;
            }
        }
        return bestM;
    }

    private Point point(final double atM) {
        double leftM = atM;
        for (int i = 1; i < corners.size(); i++) {
            final Point from = corners.get(i - 1);
            final Point until = corners.get(i);
            final double pieceM = from.distanceM(until);
            if (leftM <= pieceM && pieceM > 0) {
                final double share = leftM / pieceM;
                return new Point(
                        from.xM() + share * (until.xM() - from.xM()), from.yM() + share * (until.yM() - from.yM()));
            }
            leftM -= pieceM;
        }
        return corners.get(corners.size() - 1);
    }
}
