package slackwater.model;

/**
 * A place on the plan.
 *
 * @param xM metres to the east of the rig's origin
 * @param yM metres to the north of it
 */
public record Point(double xM, double yM) {

    public double distanceM(final Point other) {
        final double dx = xM - other.xM;
        final double dy = yM - other.yM;
        return Math.sqrt(dx * dx + dy * dy);
    }
}
