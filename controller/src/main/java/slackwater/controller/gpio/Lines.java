package slackwater.controller.gpio;

import java.util.OptionalInt;
import slackwater.model.Pull;

/**
 * The computer's lines, below the pins: claimed one by one, each with its first level. Our own port, so that everything above
 * it is tried without a board. Handles are used by the scan's thread, and writes by the supervisor's too.
 */
public interface Lines {
    /**
     * Claims an output that drives this level from its first moment.
     *
     * @throws LineRefusedException when the line is missing, busy or refused
     */
    Out claimOutput(Wire wire, boolean isHigh);

    /**
     * Claims an input, with the pull asked of the computer.
     *
     * @throws LineRefusedException when the line is missing, busy or refused
     */
    In claimInput(Wire wire, Pull pull);

    /** Gives every claimed line back. What an output does then is the kernel's affair (handbook 9.5). */
    void release();

    /**
     * A line by what hangs on it and by its number.
     *
     * @param name the rig's name of what is wired there
     * @param gpio the number, or empty while it is not wired
     */
    record Wire(String name, OptionalInt gpio) {
        @Override
        public String toString() {
            return gpio.isPresent() ? "GPIO" + gpio.getAsInt() + " (" + name + ")" : name;
        }
    }

    /** A claimed input. */
    interface In {
        /** The level now, without any debouncing (S7). */
        boolean isHigh();

        /** Whether there were edges that no earlier {@link #isHigh} has seen; takes them. */
        boolean takeEdges();
    }

    /** A claimed output. */
    interface Out {
        void write(boolean isHigh);

        /** The level at the pad, not the last write. */
        boolean isPadHigh();
    }
}
