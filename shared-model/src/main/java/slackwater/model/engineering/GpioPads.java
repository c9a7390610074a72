package slackwater.model.engineering;

import java.util.Optional;

/**
 * What the pads of a Raspberry-Pi-class chip stand and read (handbook 3.8, the vendor's pages on pins and pads). Inputs
 * are 3.3 V only; more can destroy the chip.
 *
 * @param input the limits of an input
 * @param output the limits of an output at the default drive strength
 * @param pullOhm the internal pull-up or pull-down
 * @param safePadA the most that one pin may give or take, amperes
 */
public record GpioPads(Levels input, Output output, UsualRange pullOhm, double safePadA) {
    /** The chips of the first three generations and of the small boards. */
    public static final GpioPads BCM2835_FAMILY =
            new GpioPads(new Levels(0.9, 1.6), new Output(0.14, 3.0, 0.002), new UsualRange(50e3, 65e3), 0.016);

    /**
     * The fourth generation. Its drive strengths are half the others', so half their current is taken for safe (the
     * project's own caution; the vendor states no limit).
     */
    public static final GpioPads BCM2711 =
            new GpioPads(new Levels(0.8, 2.0), new Output(0.4, 2.6, 0.004), new UsualRange(33e3, 73e3), 0.008);

    /** Supply of the pads, volts. */
    public static final double SUPPLY_V = 3.3;

    /** What the 3.3 V supply of the first boards was designed for, amperes for each pin. */
    public static final double SUPPLY_A_PER_PIN = 0.003;

    /** Pins of the first boards, which times 3 mA is the famous limit of about 50 mA for all together. */
    public static final int FIRST_BOARDS_PINS = 17;

    private static final int DRIVE_STRENGTHS = 8;

    /**
     * The input's limits, volts.
     *
     * @param lowAtMostV surely low
     * @param highAtLeastV surely high
     */
    public record Levels(double lowAtMostV, double highAtLeastV) {}

    /**
     * An output's voltage at the default drive strength.
     *
     * @param lowAtMostV when low
     * @param highAtLeastV when high
     * @param atA the current at which both are stated
     */
    public record Output(double lowAtMostV, double highAtLeastV, double atA) {}

    /** How an input reads a voltage. */
    public enum Reading {
        LOW,
        /** Nobody guarantees it. */
        UNCERTAIN,
        HIGH
    }

    /** By the word of a board in a rig file; empty for one whose pads are another chip's and not documented here. */
    public static Optional<GpioPads> ofBoard(final String word) {
        return switch (word) {
            case "pi-3", "pi-zero-2-w" -> Optional.of(BCM2835_FAMILY);
            case "pi-4" -> Optional.of(BCM2711);
            default -> Optional.empty();
        };
    }

    /** A drive strength, amperes: no limit of the current, which a short exceeds. */
    public double driveStrengthA(final int setting) {
        Given.within("setting", setting, 0, DRIVE_STRENGTHS - 1);
        return safePadA * (setting + 1) / DRIVE_STRENGTHS;
    }

    /** How an input reads a steady voltage. */
    public Reading reading(final double volts) {
        Given.within("volts", volts, 0, SUPPLY_V);
        if (volts <= input.lowAtMostV()) {
            return Reading.LOW;
        }
        return volts >= input.highAtLeastV() ? Reading.HIGH : Reading.UNCERTAIN;
    }

    /** Voltages that a pin with its internal pull-up may have against a resistor to ground. */
    public UsualRange pulledUpV(final double toGroundOhm) {
        return new UsualRange(dividedV(pullOhm.most(), toGroundOhm), dividedV(pullOhm.least(), toGroundOhm));
    }

    /** How an input with its internal pull-up reads against a resistor to ground, whatever its own pull. */
    public Reading readsPulledUp(final double toGroundOhm) {
        final UsualRange volts = pulledUpV(toGroundOhm);
        final Reading lowest = reading(volts.least());
        return lowest == reading(volts.most()) ? lowest : Reading.UNCERTAIN;
    }

    /** The voltage between two resistors from the 3.3 V supply to ground. */
    public static double dividedV(final double toSupplyOhm, final double toGroundOhm) {
        Given.positive("toSupplyOhm", toSupplyOhm);
        Given.notNegative("toGroundOhm", toGroundOhm);
        return SUPPLY_V * toGroundOhm / (toSupplyOhm + toGroundOhm);
    }

    /** What all pins together may draw from the 3.3 V supply, amperes. */
    public static double supplyA(final int pins) {
        return Given.notNegative("pins", pins) * SUPPLY_A_PER_PIN;
    }
}
