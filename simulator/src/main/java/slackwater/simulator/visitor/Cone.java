package slackwater.simulator.visitor;

import slackwater.model.Field;

/**
 * A motion sensor's field with its angles worked out once, because it is asked at every scan. What lies exactly on the
 * edge is seen.
 */
public final class Cone {
    /** Rounding of the angles; far below any lens. */
    private static final double ROUNDING_M = 1e-9;

    private final double atXM;
    private final double atYM;
    private final double facingX;
    private final double facingY;
    private final double cosineOfHalf;
    private final double rangeM;

    private Cone(final Field field) {
        final double facingRad = StrictMath.toRadians(field.facingDeg());
        final double halfRad = StrictMath.toRadians(StrictMath.min(field.angleDeg(), 360.0) / 2);
        this.atXM = field.at().xM();
        this.atYM = field.at().yM();
        this.facingX = StrictMath.cos(facingRad);
        this.facingY = StrictMath.sin(facingRad);
        this.cosineOfHalf = StrictMath.cos(halfRad);
        this.rangeM = field.rangeM();
    }

    public static Cone of(final Field field) {
        return new Cone(field);
    }

    /** Whether a place on the plan is inside; heights are left out: a sensor is hung to see all of the way. */
    public boolean sees(final double xM, final double yM) {
        final double dxM = xM - atXM;
        final double dyM = yM - atYM;
        final double awayM = Math.sqrt(dxM * dxM + dyM * dyM);
        return awayM <= rangeM + ROUNDING_M && dxM * facingX + dyM * facingY >= awayM * cosineOfHalf - ROUNDING_M;
    }
}
