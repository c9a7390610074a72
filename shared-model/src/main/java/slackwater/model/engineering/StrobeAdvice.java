package slackwater.model.engineering;

/** What others than WCAG say of strobes that people see (handbook 4.2), for notices and figures; {@link FlashCount} decides. */
public final class StrobeAdvice {
    /** A strobe that the public can see is synchronised, fixed and slower than this, Hz (case 2, a theatres' code). */
    public static final double THEATRE_BELOW_HZ = 5;
    /** Slowest of the rates that provoke seizures most, Hz (case 3, an epilepsy charity). */
    public static final double PROVOKES_FROM_HZ = 3;
    /** Fastest of the rates that provoke seizures most, Hz (case 3). */
    public static final double PROVOKES_TO_HZ = 30;
    /** Longest time to strobe on end, seconds (case 6, guidelines as a page of the trade quotes them). */
    public static final double LONGEST_ON_END_S = 30;
    /** About one person in so many has photosensitive epilepsy (case 5). */
    public static final int ONE_PERSON_IN = 4000;

    private StrobeAdvice() {}

    /** Whether a rate is among those that provoke most; both ends are. */
    public static boolean provokes(final double flashesHz) {
        Given.notNegative("flashesHz", flashesHz);
        return flashesHz >= PROVOKES_FROM_HZ && flashesHz <= PROVOKES_TO_HZ;
    }
}
