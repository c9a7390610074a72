package slackwater.simulator.yard;

import slackwater.model.Point;
import slackwater.model.Ray;

/** A straight piece on the plan, or a point where it is of no length. */
record Line(double fromXM, double fromYM, double alongXM, double alongYM) {
    static Line of(final Ray ray) {
        final double fromXM = ray.from().xM();
        final double fromYM = ray.from().yM();
        return new Line(fromXM, fromYM, ray.to().xM() - fromXM, ray.to().yM() - fromYM);
    }

    static Line of(final Point at) {
        return new Line(at.xM(), at.yM(), 0, 0);
    }

    /** Square of the distance from its nearest point. */
    double distanceM2(final double xM, final double yM) {
        final double lengthM2 = alongXM * alongXM + alongYM * alongYM;
        final double along = (xM - fromXM) * alongXM + (yM - fromYM) * alongYM;
        final double share = lengthM2 > 0 ? Math.max(0, Math.min(1, along / lengthM2)) : 0;
        final double offXM = xM - fromXM - share * alongXM;
        final double offYM = yM - fromYM - share * alongYM;
        return offXM * offXM + offYM * offYM;
    }
}
