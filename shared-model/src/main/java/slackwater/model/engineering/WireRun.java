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
        InRange.notNegative(lengthM, "lengthM");
        InRange.positive(ohmPerM, "ohmPerM");
    }

    /** There and back, ohm. */
    public double loopOhm() {
        return 2 * lengthM * ohmPerM;
    }

    /** What the run takes from the load, volts. */
    public double dropV(final double amps) {
        return InRange.notNegative(amps, "amps") * loopOhm();
    }

    /** The drop in parts of the supply's voltage. */
    public double dropShare(final double amps, final double supplyV) {
        return dropV(amps) / InRange.positive(supplyV, "supplyV");
    }

    /** Current that flows when the far end is shorted, amperes: what must trip the breaker. */
    public double shortCircuitA(final double supplyV) {
        return InRange.positive(supplyV, "supplyV") / InRange.positive(loopOhm(), "loopOhm");
    }

    /** Longest one-way run that keeps a drop, metres. */
    public static double longestM(final double ohmPerM, final double amps, final double allowedDropV) {
        InRange.positive(ohmPerM, "ohmPerM");
        return InRange.notNegative(allowedDropV, "allowedDropV") / (2 * InRange.positive(amps, "amps") * ohmPerM);
    }
}
