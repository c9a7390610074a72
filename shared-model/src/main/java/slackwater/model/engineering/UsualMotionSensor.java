package slackwater.model.engineering;

/**
 * Figures of the usual small passive infrared module (handbook 5.1, HC-SR501 type, from three pages on it): for a first guess
 * where a rig says nothing, to be marked as assumed.
 */
public final class UsualMotionSensor {
    /** Shortest pulse that its trimmer gives, seconds (case 1). */
    public static final double PULSE_LEAST_S = 0.3;
    /** Longest pulse that its trimmer gives, seconds (case 1). */
    public static final double PULSE_MOST_S = 200;
    /** Blind after the pulse, seconds (case 2); another manual says about 3. */
    public static final double BLOCK_S = 2.5;
    /** Farthest that it sees, metres (case 3). */
    public static final double RANGE_M = 7;
    /** Narrowest opening that is told of it, degrees (case 4). */
    public static final double ANGLE_LEAST_DEG = 100;
    /** Widest opening that is told of it, degrees (case 4). */
    public static final double ANGLE_MOST_DEG = 120;
    /** May fire up to three times in so many seconds after power-on (case 5). */
    public static final double WARM_UP_S = 60;
    /** Level of its output while it sees, volts (case 6): may go straight to a 3.3 V input. */
    public static final double HIGH_V = 3.3;
    /** Lowest supply, volts (case 7). */
    public static final double SUPPLY_LEAST_V = 4.5;
    /** Highest supply, volts (case 7). */
    public static final double SUPPLY_MOST_V = 20;

    private UsualMotionSensor() {}
}
