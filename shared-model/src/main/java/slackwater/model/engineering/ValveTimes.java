package slackwater.model.engineering;

/**
 * How long solenoid valves usually take to switch at 24 V DC (handbook 1.8, common practice, no source): a guess for a
 * valve whose figure is missing, to be marked as assumed. A plain flyback diode adds several milliseconds to release.
 */
public final class ValveTimes {
    /** Small direct-acting 3/2 valve, either way (case 1). */
    public static final UsualRange DIRECT_S = new UsualRange(0.005, 0.015);
    /** Pilot-operated 5/2 valve of 1/8 to 1/4 inch, on (case 2). */
    public static final UsualRange PILOT_ON_S = new UsualRange(0.012, 0.030);
    /** The same, off, by its spring and without a flyback diode's delay (case 3). */
    public static final UsualRange PILOT_OFF_S = new UsualRange(0.020, 0.050);
    /**
     * Share of the outlet's change of pressure at which NFPA T3.21.8-1990 stops the clock (case 4). Data sheets compare
     * only within one definition: results differ by more than a factor of 2.
     */
    public static final double NFPA_SHARE = 0.9;
    /** The same for CETOP RP111P (case 4). */
    public static final double CETOP_SHARE = 0.5;

    private ValveTimes() {}
}
