package slackwater.simulator.yard;

/**
 * The output logic of a passive infrared module (handbook 5.2, HC-SR501 type): with retriggering every detection restarts the
 * pulse, without it the pulse is as long as it is; after it the module is blind for a while.
 *
 * @param pulseNs the module's delay
 * @param blockNs blind for so long after the pulse
 * @param retriggers its jumper at H
 */
record PirLogic(long pulseNs, long blockNs, boolean retriggers) {
    /** Before anything was seen. */
    static final long QUIET = Long.MIN_VALUE / 2;

    boolean isHigh(final long highUntilNs, final long atNs) {
        return atNs < highUntilNs;
    }

    /** Until when the output is high, after a detection. */
    long afterDetection(final long highUntilNs, final long atNs) {
        if (isHigh(highUntilNs, atNs)) {
            return retriggers ? atNs + pulseNs : highUntilNs;
        }
        return atNs < highUntilNs + blockNs ? highUntilNs : atNs + pulseNs;
    }
}
