package slackwater.model.engineering;

/**
 * A pneumatic cylinder: its areas, forces and air (handbook 1.1, 1.2; ISO 15552 and ISO 6432 for usual bores and
 * rods). Forces are theoretical: still, without friction, the other side vented. Common practice, no source, counts
 * on 85 to 95 % of them at 6 bar, and on a share of 0.7 (still) or 0.5 (fast) when choosing a size.
 *
 * @param boreM m, above 0
 * @param rodM m, 0 (no rod on that side) or more, below the bore
 * @param travelM m, above 0
 */
public record Cylinder(double boreM, double rodM, double travelM) {
    /** Free fall, m/s2. */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    public Cylinder {
        Given.positive("boreM", boreM);
        Given.below("rodM", rodM, boreM);
        Given.positive("travelM", travelM);
    }

    /** The piston's area on the side without the rod, m2. */
    public double pushAreaM2() {
        return Orifice.circleM2(boreM);
    }

    /** The piston's area on the rod's side, m2. */
    public double pullAreaM2() {
        return pushAreaM2() - Orifice.circleM2(rodM);
    }

    /**
     * Theoretical force outward (handbook 1.1).
     *
     * @param gaugePa Pa gauge, 0 or more
     * @return N
     */
    public double pushN(final double gaugePa) {
        return Given.notNegative("gaugePa", gaugePa) * pushAreaM2();
    }

    /** Theoretical force inward, N; as {@link #pushN}. */
    public double pullN(final double gaugePa) {
        return Given.notNegative("gaugePa", gaugePa) * pullAreaM2();
    }

    /**
     * What is left to lift with when it pushes a load straight up (handbook 1.9 case 8); negative when the load sinks.
     *
     * @param gaugePa Pa gauge, 0 or more
     * @param frictionShare of the theoretical force that the seals take, 0 to below 1
     * @param massKg kg, 0 or more
     * @return N
     */
    public double netLiftN(final double gaugePa, final double frictionShare, final double massKg) {
        Given.below("frictionShare", frictionShare, 1);
        Given.notNegative("massKg", massKg);
        return pushN(gaugePa) * (1 - frictionShare) - massKg * GRAVITY_M_PER_S2;
    }

    /**
     * Air for one way out, swept volume only, air at 20 degC (handbook 1.2). A spring-returned cylinder takes no other.
     *
     * @param gaugePa Pa gauge, 0 or more, in a standard atmosphere
     * @param reference {@link AirReference#ANR} is the handbook's convention (a), {@link AirReference#FREE_AIR} is (b)
     * @return m3
     */
    public double pushAirM3(final double gaugePa, final AirReference reference) {
        return airM3(pushAreaM2() * travelM, gaugePa, reference);
    }

    /** Air for one way in, m3; as {@link #pushAirM3}. */
    public double pullAirM3(final double gaugePa, final AirReference reference) {
        return airM3(pullAreaM2() * travelM, gaugePa, reference);
    }

    /** Air for once out and in again, both driven by air, m3; as {@link #pushAirM3}. */
    public double doubleAirM3(final double gaugePa, final AirReference reference) {
        return pushAirM3(gaugePa, reference) + pullAirM3(gaugePa, reference);
    }

    /**
     * Air that a hose or port takes each time it is filled: it is never emptied below the atmosphere, so it counts its
     * gauge pressure only (handbook 1.2). Add it for each way that the cylinder is driven by air.
     *
     * @param deadM3 m3 between valve and piston, 0 or more
     * @return m3
     */
    public static double deadAirM3(final double deadM3, final double gaugePa, final AirReference reference) {
        Given.notNegative("gaugePa", gaugePa);
        return reference.ofSpaceM3(deadM3, gaugePa, FreeAir.REFERENCE_K);
    }

    private static double airM3(final double sweptM3, final double gaugePa, final AirReference reference) {
        Given.notNegative("gaugePa", gaugePa);
        return reference.ofSpaceM3(sweptM3, FreeAir.absolutePa(gaugePa), FreeAir.REFERENCE_K);
    }
}
