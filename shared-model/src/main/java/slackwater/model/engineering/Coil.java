package slackwater.model.engineering;

/**
 * A relay's or a valve's coil as inductance and resistance in series (handbook 3.5). Once the armature has dropped the
 * inductance is lower; that is neglected, so that a release is a little faster than computed.
 *
 * @param inductanceH henry, armature closed
 * @param resistanceOhm at the temperature in question
 * @param supplyV direct current
 */
public record Coil(double inductanceH, double resistanceOhm, double supplyV) {
    /** Clamp voltage of a diode across the coil. */
    public static final double DIODE_V = 0.7;

    public Coil {
        Given.positive("inductanceH", inductanceH);
        Given.positive("resistanceOhm", resistanceOhm);
        Given.positive("supplyV", supplyV);
    }

    /** Clamp voltage of a Zener diode in series with a diode, volts: faster than {@link #DIODE_V}. */
    public static double zenerClampV(final double zenerV) {
        return Given.positive("zenerV", zenerV) + DIODE_V;
    }

    /** L/R, seconds. */
    public double timeConstantS() {
        return inductanceH / resistanceOhm;
    }

    public double steadyA() {
        return supplyV / resistanceOhm;
    }

    /** The current a time after the switch closed, amperes. */
    public double riseA(final double timeS) {
        return steadyA() * (1 - keptAfter(timeS));
    }

    /**
     * The current a time after the switch opened on the steady current, amperes: never below 0.
     *
     * @param clampV across the coil, 0 for an ideal short
     */
    public double decayA(final double clampV, final double timeS) {
        final double offsetA = Given.notNegative("clampV", clampV) / resistanceOhm;
        return Math.max(0, (steadyA() + offsetA) * keptAfter(timeS) - offsetA);
    }

    /**
     * Seconds until the current has fallen to a part of the steady current.
     *
     * @param clampV across the coil, 0 for an ideal short
     * @param part 0 to 1; above 0 with an ideal short, which never ends the current
     */
    public double decayS(final double clampV, final double part) {
        final double offsetA = Given.notNegative("clampV", clampV) / resistanceOhm;
        Given.within("part", part, 0, 1);
        if (clampV == 0 && part == 0) {
            throw new IllegalArgumentException("clampV=0.0 and part=0.0: an ideal short never ends the current");
        }
        return timeConstantS() * StrictMath.log((steadyA() + offsetA) / (part * steadyA() + offsetA));
    }

    /** Energy in its field at the steady current, J. */
    public double energyJ() {
        return inductanceH * steadyA() * steadyA() / 2;
    }

    /** What the open switch must stand, volts. */
    public double switchV(final double clampV) {
        return supplyV + Given.notNegative("clampV", clampV);
    }

    /** What the switch sees when the current is forced to end within a time and nothing clamps, volts. */
    public double spikeV(final double withinS) {
        return supplyV + inductanceH * steadyA() / Given.positive("withinS", withinS);
    }

    private double keptAfter(final double timeS) {
        return StrictMath.exp(-Given.notNegative("timeS", timeS) / timeConstantS());
    }
}
