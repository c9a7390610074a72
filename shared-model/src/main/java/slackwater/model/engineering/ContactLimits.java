package slackwater.model.engineering;

/**
 * Forces and energies that standards name for contact with people (handbook 1.11), as figures of caution beside a
 * prop's own. They are <b>never a permission</b>: those of {@link BodyPart} mark where pain begins for healthy adult
 * workers, at a trained workplace. A path with children is outside their scope, and being below them does not make a
 * prop safe to touch: distance and guards do that.
 */
public final class ContactLimits {
    /** Powered door, closing on somebody: dynamic force (case 10, EN 12453), N. */
    public static final double DOOR_DYNAMIC_N = 400;
    /** That force for at most this long, s. */
    public static final double DOOR_DYNAMIC_S = 0.75;
    /** Then at most this force, N. */
    public static final double DOOR_STATIC_N = 150;
    /** After this time since contact, s. */
    public static final double DOOR_RELEASE_S = 5;
    /** Less than this force, N. */
    public static final double DOOR_RELEASED_N = 25;
    /** Low-energy door: energy of the leaf (case 11, EN 16005 and ANSI A156.19-1997 4.5), J. */
    public static final double LOW_ENERGY_DOOR_J = 1.69;
    /** Low-energy door: force that stops the leaf (case 12, ANSI A156.19-1997 4.4: 15 lbf), N. */
    public static final double LOW_ENERGY_DOOR_N = 66.7;
    /** Powered guard without a protective device (case 13, ISO 14120:2015, from memory), N. */
    public static final double GUARD_N = 75;
    /** The same, J. */
    public static final double GUARD_J = 4;
    /** Powered guard with a device that opens it again (case 13, from memory), N. */
    public static final double REOPENING_GUARD_N = 150;
    /** The same, J. */
    public static final double REOPENING_GUARD_J = 10;

    private ContactLimits() {}

    /**
     * The bore whose theoretical push is just this force (case 16); a real one must be smaller.
     *
     * @param forceN N, above 0
     * @param gaugePa Pa gauge, above 0
     * @return m
     */
    public static double boreM(final double forceN, final double gaugePa) {
        Given.positive("forceN", forceN);
        Given.positive("gaugePa", gaugePa);
        return StrictMath.sqrt(4 * forceN / (StrictMath.PI * gaugePa));
    }

    /**
     * The pressure at which a cylinder's theoretical push is just this force (case 17).
     *
     * @param forceN N, above 0
     * @return Pa gauge
     */
    public static double gaugePa(final double forceN, final Cylinder cylinder) {
        return Given.positive("forceN", forceN) / cylinder.pushAreaM2();
    }

    /**
     * The force that EN 12453 names for each moment of a powered door's contact (case 10). Its whole rule has more to
     * it: where and with which instrument it is measured.
     *
     * @param sinceContactS s since the first contact, 0 or more
     * @return N; after 5 s the force must stay below it
     */
    public static double doorN(final double sinceContactS) {
        Given.notNegative("sinceContactS", sinceContactS);
        if (sinceContactS <= DOOR_DYNAMIC_S) {
            return DOOR_DYNAMIC_N;
        }
        return sinceContactS <= DOOR_RELEASE_S ? DOOR_STATIC_N : DOOR_RELEASED_N;
    }
}
