package slackwater.model.engineering;

/**
 * A two-wire run to a load (handbook 3.3).
 *
 * @param lengthM one way, metres
 * @param ohmPerM of one conductor: {@link Copper#ohmPerM} or {@link WireTable}
 */
public record WireRun(double lengthM, double ohmPerM) {
    /** Advised drop of a branch circuit, in parts of the supply (NEC 210.19, a note and no rule; from memory). */
    public static final double ADVISED_BRANCH_DROP = 0.03;

    /** Advised drop of feeder and branch together (NEC 210.19, a note and no rule; from memory). */
    public static final double ADVISED_WHOLE_DROP = 0.05;

    public WireRun {
        Given.notNegative("lengthM", lengthM);
        Given.positive("ohmPerM", ohmPerM);
    }

    /** There and back, ohm. */
    public double loopOhm() {
        return 2 * lengthM * ohmPerM;
    }

    /** What the run takes from the load, volts. */
    public double dropV(final double amps) {
        return Given.notNegative("amps", amps) * loopOhm();
    }

    /** The drop in parts of the supply's voltage. */
    public double dropShare(final double amps, final double supplyV) {
        return dropV(amps) / Given.positive("supplyV", supplyV);
    }

    /** Current that flows when the far end is shorted, amperes: what must trip the breaker. */
    public double shortCircuitA(final double supplyV) {
        return Given.positive("supplyV", supplyV) / Given.positive("loopOhm", loopOhm());
    }

    /** Longest one-way run that keeps a drop, metres. */
    public static double longestM(final double ohmPerM, final double amps, final double allowedDropV) {
        Given.positive("ohmPerM", ohmPerM);
        return Given.notNegative("allowedDropV", allowedDropV) / (2 * Given.positive("amps", amps) * ohmPerM);
    }
}
