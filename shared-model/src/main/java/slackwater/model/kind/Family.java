package slackwater.model.kind;

/**
 * What an output is to the safety rules. Kinds are open, families are closed: a kind from outside the project chooses the
 * family whose limits, mode table (S15) and rest it accepts.
 */
public enum Family {
    /** Solenoid valve that moves a prop or makes an air jet. */
    VALVE(true, true),
    /** Normally exhausting valve that feeds all others; exempt from a longest-on. */
    AIR_SUPPLY(false, false),
    /** Fluid pump of a fog maker. */
    PUMP(true, false),
    /** Heater block; keeps its own independent cut-out. */
    HEATER(false, false),
    /** Flashing light, one flash a pulse or by itself while powered. */
    STROBE(true, false),
    /** Steady light; blinking is a shape. */
    LAMP(false, false),
    /** Fan; may run on for a while after its demand. */
    FAN(false, false),
    /** Ultrasonic discs in a water tray. */
    MISTER(true, false),
    /** Energise-to-release latch: one shot, spent until hung again. */
    RELEASE(true, true),
    /** Horn, bell or player that sounds while energised. */
    SOUNDER(false, false),
    /** A pulse to a bought prop whose reach and run time are declared. */
    CONTACT(true, true);

    private final boolean consumesDemand;
    private final boolean moves;

    Family(final boolean consumesDemand, final boolean moves) {
        this.consumesDemand = consumesDemand;
        this.moves = moves;
    }

    /** Whether a refusal or a limit uses the demand up, so that only a new step renews it (S11). */
    public boolean consumesDemand() {
        return consumesDemand;
    }

    /** Whether energising it can move something that a person could be hit by (S1). */
    public boolean moves() {
        return moves;
    }
}
