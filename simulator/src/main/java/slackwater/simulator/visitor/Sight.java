package slackwater.simulator.visitor;

import slackwater.model.Field;
import slackwater.model.Point;
import slackwater.model.Ray;

/** What sensors and the referee can make of a body on the plan. */
public final class Sight {
    /** Slower than this is standing: a passive infrared sensor sees change only (common practice, no source), m/s. */
    public static final double STANDING_MPS = 0.05;

    private Sight() {}

    /** Whether a motion sensor's field covers a place; for asking often see {@link Cone}. */
    public static boolean isSeenBy(final Field field, final double xM, final double yM) {
        return Cone.of(field).sees(xM, yM);
    }

    /** Whether a body cuts the light: it reaches the beam on the plan, and is taller than the beam is high. */
    public static boolean blocks(final Ray ray, final double xM, final double yM, final double heightM) {
        return heightM > ray.heightM() && fromSegmentM(ray, xM, yM) <= Visitor.BODY_RADIUS_M;
    }

    /** Whether a body's middle is inside a circle, its edge included. */
    public static boolean isWithin(final Point centre, final double radiusM, final double xM, final double yM) {
        final double dxM = xM - centre.xM();
        final double dyM = yM - centre.yM();
        return dxM * dxM + dyM * dyM <= radiusM * radiusM;
    }

    /** Whether a motion sensor has anything to see: it sees movement, not presence. */
    public static boolean isMoving(final Visitor visitor, final long nowNs) {
        return visitor.speedMps(nowNs) > STANDING_MPS;
    }

    private static double fromSegmentM(final Ray ray, final double xM, final double yM) {
        final double rayXM = ray.to().xM() - ray.from().xM();
        final double rayYM = ray.to().yM() - ray.from().yM();
        final double toXM = xM - ray.from().xM();
        final double toYM = yM - ray.from().yM();
        final double lengthSquared = rayXM * rayXM + rayYM * rayYM;
        final double dot = toXM * rayXM + toYM * rayYM;
        final double share = lengthSquared == 0 ? 0 : Math.min(1, Math.max(0, dot / lengthSquared));
        final double offXM = toXM - share * rayXM;
        final double offYM = toYM - share * rayYM;
        return Math.sqrt(offXM * offXM + offYM * offYM);
    }
}
