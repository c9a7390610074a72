package slackwater.simulator.visitor;

import java.util.Arrays;

/**
 * Somebody on their way through the yard. Where they are is a function of time alone, straight from one waypoint to the
 * next; standing is two waypoints at one place. So nothing has to be stepped, and a forked run shares its visitors.
 */
public final class Visitor {
    /** Half of a body's depth, metres (handbook 5.3 case 4 has 0.30 m): a body is a circle on the plan. */
    public static final double BODY_RADIUS_M = 0.15;

    private static final double NS_PER_S = 1e9;

    /**
     * Who it is.
     *
     * @param id unique in the crowd
     * @param group the same for all who walk together
     * @param heightM metres, above 0
     */
    public record Body(int id, int group, Being being, double heightM) {
        public Body {
            if (!(heightM > 0) || Double.isInfinite(heightM)) {
                throw new IllegalArgumentException("heightM must be above 0 but was " + heightM + " for visitor " + id);
            }
        }
    }

    private final Body body;
    private final long[] atNs;
    private final double[] xM;
    private final double[] yM;

    private Visitor(final Body body, final long[] atNs, final double[] xM, final double[] yM) {
        this.body = body;
        this.atNs = atNs;
        this.xM = xM;
        this.yM = yM;
    }

    /**
     * Somebody with a way of their own.
     *
     * @param atNs when each waypoint is reached; at least two, each later than the one before
     * @param xM metres east, one for each waypoint
     * @param yM metres north, one for each waypoint
     */
    public static Visitor of(final Body body, final long[] atNs, final double[] xM, final double[] yM) {
        if (atNs.length < 2 || xM.length != atNs.length || yM.length != atNs.length) {
            throw new IllegalArgumentException("visitor " + body.id() + " needs two waypoints or more, but has "
                    + atNs.length + " times, " + xM.length + " x and " + yM.length + " y");
        }
        for (int i = 1; i < atNs.length; i++) {
            if (atNs[i] <= atNs[i - 1]) {
                throw new IllegalArgumentException("visitor " + body.id() + ": waypoint " + i + " at " + atNs[i]
                        + " ns is not later than " + atNs[i - 1] + " ns");
            }
        }
        return new Visitor(body, atNs.clone(), xM.clone(), yM.clone());
    }

    public int id() {
        return body.id();
    }

    public int group() {
        return body.group();
    }

    public Being being() {
        return body.being();
    }

    public double heightM() {
        return body.heightM();
    }

    /** When they enter the yard. */
    public long arrivesNs() {
        return atNs[0];
    }

    /** When they have left it: the first moment at which they are no longer here. */
    public long leavesNs() {
        return atNs[atNs.length - 1];
    }

    public boolean isHere(final long nowNs) {
        return arrivesNs() <= nowNs && nowNs < leavesNs();
    }

    /** Metres east; before arriving and after leaving the nearest end of the way. */
    public double xM(final long nowNs) {
        return along(xM, nowNs);
    }

    /** Metres north; before arriving and after leaving the nearest end of the way. */
    public double yM(final long nowNs) {
        return along(yM, nowNs);
    }

    /** Speed over the ground, metres a second; 0 for somebody who is not here. */
    public double speedMps(final long nowNs) {
        if (!isHere(nowNs)) {
            return 0;
        }
        final int leg = leg(nowNs);
        return legM(leg) / ((atNs[leg + 1] - atNs[leg]) / NS_PER_S);
    }

    /** All the way walked from arriving to leaving, metres. */
    public double pathM() {
        double sumM = 0;
        for (int leg = 0; leg < atNs.length - 1; leg++) {
            sumM += legM(leg);
        }
        return sumM;
    }

    /** Time from arriving to leaving, seconds. */
    public double stayS() {
        return (leavesNs() - arrivesNs()) / NS_PER_S;
    }

    /** How long they walk faster than a given speed, seconds. */
    double fasterThanS(final double speedMps) {
        double sumS = 0;
        for (int leg = 0; leg < atNs.length - 1; leg++) {
            final double legS = (atNs[leg + 1] - atNs[leg]) / NS_PER_S;
            sumS += legM(leg) > speedMps * legS ? legS : 0;
        }
        return sumS;
    }

    int waypoints() {
        return atNs.length;
    }

    long waypointNs(final int waypoint) {
        return atNs[waypoint];
    }

    /** The same way at another time, under another id. */
    Visitor moved(final Body as, final long byNs) {
        final long[] movedNs = new long[atNs.length];
        for (int i = 0; i < atNs.length; i++) {
            movedNs[i] = Math.addExact(atNs[i], byNs);
        }
        return new Visitor(as, movedNs, xM, yM);
    }

    private double along(final double[] places, final long nowNs) {
        if (nowNs <= arrivesNs()) {
            return places[0];
        }
        if (nowNs >= leavesNs()) {
            return places[places.length - 1];
        }
        final int leg = leg(nowNs);
        final double share = (double) (nowNs - atNs[leg]) / (atNs[leg + 1] - atNs[leg]);
        return places[leg] + share * (places[leg + 1] - places[leg]);
    }

    /** The leg that is being walked; a waypoint belongs to the leg that begins there. */
    private int leg(final long nowNs) {
        final int found = Arrays.binarySearch(atNs, nowNs);
        return found >= 0 ? found : -found - 2;
    }

    private double legM(final int leg) {
        final double dxM = xM[leg + 1] - xM[leg];
        final double dyM = yM[leg + 1] - yM[leg];
        return Math.sqrt(dxM * dxM + dyM * dyM);
    }

    @Override
    public boolean equals(final Object other) {
        return other instanceof Visitor that
                && body.equals(that.body)
                && Arrays.equals(atNs, that.atNs)
                && Arrays.equals(xM, that.xM)
                && Arrays.equals(yM, that.yM);
    }

    @Override
    public int hashCode() {
        return 31 * body.hashCode() + Arrays.hashCode(atNs);
    }

    @Override
    public String toString() {
        return body + " from " + arrivesNs() + " to " + leavesNs() + " ns";
    }
}
