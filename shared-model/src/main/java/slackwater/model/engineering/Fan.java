package slackwater.model.engineering;

import java.util.Optional;

/**
 * A motion sensor's fan of sight on the plan (handbook 5.3, plane geometry), seen against a straight way. What lies on its edge
 * belongs to it.
 *
 * @param xM east, metres
 * @param yM north, metres
 * @param facingDeg where its middle looks, degrees counter-clockwise from east
 * @param angleDeg its whole opening, above 0 to 180
 * @param rangeM above 0
 */
public record Fan(double xM, double yM, double facingDeg, double angleDeg, double rangeM) {

    public Fan {
        Given.positive("angleDeg", angleDeg);
        Given.within("angleDeg", angleDeg, 0, 180);
        Given.positive("rangeM", rangeM);
        if (!Double.isFinite(xM + yM + facingDeg)) {
            throw new IllegalArgumentException("xM=" + xM + ", yM=" + yM + ", facingDeg=" + facingDeg + " is no place");
        }
    }

    /**
     * A straight way from one place to another one.
     *
     * @param fromXM metres, as the others
     */
    public record Way(double fromXM, double fromYM, double toXM, double toYM) {
        public Way {
            Given.positive("length of the way", StrictMath.hypot(toXM - fromXM, toYM - fromYM));
        }

        public double lengthM() {
            return StrictMath.hypot(toXM - fromXM, toYM - fromYM);
        }
    }

    /** A part of a way, metres from its beginning: {@code fromM} is where somebody is first seen. */
    public record Stretch(double fromM, double toM) {
        public double lengthM() {
            return toM - fromM;
        }

        private Optional<Stretch> and(final double leastM, final double mostM) {
            final Stretch both = new Stretch(Math.max(fromM, leastM), Math.min(toM, mostM));
            return both.fromM <= both.toM ? Optional.of(both) : Optional.empty();
        }
    }

    /** The part of a way that the fan sees, or empty when it sees none of it. */
    public Optional<Stretch> seen(final Way way) {
        final double alongX = (way.toXM() - way.fromXM()) / way.lengthM();
        final double alongY = (way.toYM() - way.fromYM()) / way.lengthM();
        final double startX = way.fromXM() - xM;
        final double startY = way.fromYM() - yM;
        final double rightRad = StrictMath.toRadians(facingDeg - angleDeg / 2);
        final double leftRad = StrictMath.toRadians(facingDeg + angleDeg / 2);
        return inRange(startX * alongX + startY * alongY, startX * alongY - startY * alongX)
                .flatMap(stretch -> stretch.and(0, way.lengthM()))
                .flatMap(stretch -> beside(
                        stretch,
                        cross(StrictMath.cos(rightRad), StrictMath.sin(rightRad), startX, startY),
                        cross(StrictMath.cos(rightRad), StrictMath.sin(rightRad), alongX, alongY)))
                .flatMap(stretch -> beside(
                        stretch,
                        -cross(StrictMath.cos(leftRad), StrictMath.sin(leftRad), startX, startY),
                        -cross(StrictMath.cos(leftRad), StrictMath.sin(leftRad), alongX, alongY)));
    }

    private Optional<Stretch> inRange(final double startAlongM, final double asideM) {
        final double squareM2 = rangeM * rangeM - asideM * asideM;
        if (squareM2 < 0) {
            return Optional.empty();
        }
        final double halfM = Math.sqrt(squareM2);
        return Optional.of(new Stretch(-startAlongM - halfM, -startAlongM + halfM));
    }

    /** The part of a stretch on the inner side of one edge, where {@code startM + changePerM * m} is 0 or more. */
    private static Optional<Stretch> beside(final Stretch stretch, final double startM, final double changePerM) {
        if (changePerM > 0) {
            return stretch.and(-startM / changePerM, Double.POSITIVE_INFINITY);
        }
        if (changePerM < 0) {
            return stretch.and(Double.NEGATIVE_INFINITY, -startM / changePerM);
        }
        return startM >= 0 ? Optional.of(stretch) : Optional.empty();
    }

    private static double cross(final double oneX, final double oneY, final double otherX, final double otherY) {
        return oneX * otherY - oneY * otherX;
    }
}
