package slackwater.model.engineering;

import java.util.OptionalDouble;

/**
 * How many times its steady current a load draws while it starts (handbook 3.4, by load type in the manual of a relay
 * module).
 */
public enum LoadType {
    RESISTIVE(1, 1),
    /** On alternating current: on direct current its inductance delays it, and it never exceeds the steady current. */
    SOLENOID(10, 20),
    MOTOR(5, 10),
    /** A lamp with a filament. */
    FILAMENT_LAMP(10, 15),
    SODIUM_LAMP(1, 3),
    MERCURY_LAMP(3, 3),
    /** A power supply or a driver of light-emitting diodes. */
    CAPACITIVE(20, 40),
    TRANSFORMER(5, 15);

    private static final double LAMP_FACTOR = 10;
    private static final double MOTOR_FACTOR = 6;

    private final double lowestMultiple;
    private final double highestMultiple;

    LoadType(final double lowestMultiple, final double highestMultiple) {
        this.lowestMultiple = lowestMultiple;
        this.highestMultiple = highestMultiple;
    }

    /** Inrush in multiples of the steady current. */
    public UsualRange inrushMultiple() {
        return new UsualRange(lowestMultiple, highestMultiple);
    }

    /** The most that the load may draw while it starts, amperes. */
    public double highestInrushA(final double steadyA) {
        return Given.notNegative("steadyA", steadyA) * highestMultiple;
    }

    /** The steady current times this must not exceed a contact's resistive rating; published for lamps and motors. */
    public OptionalDouble oneFactor() {
        return switch (this) {
            case FILAMENT_LAMP -> OptionalDouble.of(LAMP_FACTOR);
            case MOTOR -> OptionalDouble.of(MOTOR_FACTOR);
            case RESISTIVE, SOLENOID, SODIUM_LAMP, MERCURY_LAMP, CAPACITIVE, TRANSFORMER -> OptionalDouble.empty();
        };
    }
}
