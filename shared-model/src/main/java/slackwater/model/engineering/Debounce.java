package slackwater.model.engineering;

/**
 * A debouncer that looks at a line at a fixed pace and accepts a new level after so many equal samples (handbook 5.6). Whole
 * nanoseconds, so that a sample at the very end of a bounce falls on one side only.
 *
 * @param sampleNs time between samples, above 0
 * @param equalSamples at least 1
 */
public record Debounce(long sampleNs, int equalSamples) {
    /** Mean bounce of small switches, seconds (case 1, a survey by Ganssle; from memory). */
    public static final double SWITCH_MEAN_S = 0.0016;
    /** Longest bounce of a small switch in that survey, seconds (case 1; from memory). */
    public static final double SWITCH_LONGEST_S = 0.0062;
    /** Usual debouncing of push buttons, from here (case 2; common practice, no source). */
    public static final double BUTTON_LEAST_S = 0.010;
    /** Usual debouncing of push buttons, to here (case 2; common practice, no source). */
    public static final double BUTTON_MOST_S = 0.050;
    /** Usual bounce of a relay's contact, from here (case 3; common practice, no source). */
    public static final double RELAY_LEAST_S = 0.001;
    /** Usual bounce of a relay's contact, to here (case 3; common practice, no source). */
    public static final double RELAY_MOST_S = 0.010;

    public Debounce {
        if (sampleNs < 1 || equalSamples < 1) {
            throw new IllegalArgumentException(
                    "sampleNs=" + sampleNs + " and equalSamples=" + equalSamples + " must both be above 0");
        }
    }

    /**
     * When a new level is accepted, with samples at 0, {@code sampleNs}, twice that and so on.
     *
     * @param bounceEndsNs from then on the line is steady, the moment itself included; 0 or later
     */
    public long acceptedAtNs(final long bounceEndsNs) {
        if (bounceEndsNs < 0) {
            throw new IllegalArgumentException("bounceEndsNs=" + bounceEndsNs + " is before the first sample");
        }
        final long firstSteady = Math.floorDiv(bounceEndsNs + sampleNs - 1, sampleNs);
        return (firstSteady + equalSamples - 1) * sampleNs;
    }

    /** The longest delay that the samples add to a steady level, if it becomes steady just after one; it is never reached. */
    public long addsBelowNs() {
        return equalSamples * sampleNs;
    }
}
