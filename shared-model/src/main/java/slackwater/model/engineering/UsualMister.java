package slackwater.model.engineering;

/** What an ultrasonic disc of 20 mm on 24 V and 1 A usually does (handbook 2.5; common practice, no source). */
public final class UsualMister {
    private static final double M3_PER_S_OF_CM3_PER_H = 1e-6 / 3_600;

    /** Water that a disc turns into droplets, m3/s: 250 to 450 cm3/h. */
    public static final UsualRange DISC_M3_PER_S = new UsualRange(250, 450).times(M3_PER_S_OF_CM3_PER_H);

    /** Water over the disc, metres: less kills it in seconds to minutes, more drowns the mist. */
    public static final UsualRange WATER_COVER_M = new UsualRange(0.010, 0.040);

    /** Frequency of the disc, hertz (handbook 2.5 case 7). */
    public static final double DISC_HZ = 1.7e6;

    private UsualMister() {}
}
