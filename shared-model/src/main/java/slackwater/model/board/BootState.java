package slackwater.model.board;

import java.util.Locale;
import slackwater.model.Level;
import slackwater.model.Pull;

/**
 * What an output's line does between power-on and the moment the program takes the pin, while nothing of ours runs.
 *
 * @param verdict what that means for the load
 * @param reason one sentence for the person who wires it
 */
public record BootState(Verdict verdict, String reason) {

    /** What a load does while the computer boots. */
    public enum Verdict {
        /** The line stays at its rest level. */
        AT_REST("at rest"),
        /** It depends on what is wired to the pin: nobody knows without a measurement. */
        UNCERTAIN("uncertain"),
        /** The line goes to the level that energises. */
        ENERGISED("energised");

        private final String words;

        Verdict(final String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * The state of an output's line at boot.
     *
     * @param gpio a GPIO on the board's header
     * @param energised the level that energises the load
     */
    public static BootState of(final Board board, final int gpio, final Level energised) {
        if (!board.isOnHeader(gpio)) {
            throw new IllegalArgumentException("gpio=" + gpio + " is not on the header of " + board.word());
        }
        if (board.isBusyAtBoot(gpio)) {
            return ofBusy(board, gpio, energised);
        }
        final String pin = "GPIO" + gpio;
        return switch (board.pullAtReset(gpio)) {
            case UP ->
                energised == Level.HIGH
                        ? energised(
                                pin + " is pulled up from reset until the program runs, and high energises the load.")
                        : atRest(pin + " is pulled up from reset, and high is rest.");
            case DOWN ->
                energised == Level.HIGH
                        ? atRest(pin + " is pulled down from reset, and low is rest.")
                        : uncertain(
                                pin + " is pulled down from reset and low energises the load: a sensitive opto board"
                                        + " may switch on (handbook 3.12).");
            case NONE -> uncertain(pin + " has no pull at reset, so it floats until the program runs.");
        };
    }

    /** The pins of handbook 3.11 that no image leaves alone: a pull says only part of what they do. */
    private static BootState ofBusy(final Board board, final int gpio, final Level energised) {
        final String does = "GPIO" + gpio + ": " + board.lifeAtBoot(gpio) + "; ";
        final boolean isPulledUp = board.pullAtReset(gpio) == Pull.UP;
        final boolean isReserved = gpio <= 1;
        final String level = energised.name().toLowerCase(Locale.ROOT);
        if (energised == Level.HIGH && (isPulledUp || gpio == 14)) {
            return energised(does + "it is high before the program runs, and high energises the load.");
        }
        if (isPulledUp && !isReserved) {
            return atRest(does + "it is high before the program runs, and high is rest.");
        }
        return uncertain(
                does + "it may go " + level + " before the program runs, and " + level + " energises the load.");
    }

    private static BootState atRest(final String reason) {
        return new BootState(Verdict.AT_REST, reason);
    }

    private static BootState uncertain(final String reason) {
        return new BootState(Verdict.UNCERTAIN, reason);
    }

    private static BootState energised(final String reason) {
        return new BootState(Verdict.ENERGISED, reason);
    }
}
