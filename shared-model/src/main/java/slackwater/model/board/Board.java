package slackwater.model.board;

import java.util.List;
import java.util.OptionalInt;
import slackwater.model.Pull;

/** A Raspberry-Pi-class computer: what its header offers and what its pins do before any program runs. */
public interface Board {
    /** The word that the rig file uses, such as {@code pi-4}. */
    String word();

    /** GPIO numbers on the header, ascending. */
    List<Integer> header();

    /** The header pin of a GPIO, or empty when it is not on the header. */
    OptionalInt headerPin(int gpio);

    /**
     * What is on each pin of the header: {@code 3V3}, {@code 5V}, {@code GND} or {@code GPIO} with its number. The
     * first is header pin 1; odd pins are the left column, even pins the right one (handbook 3.10).
     */
    List<String> signals();

    /** The pull at reset (handbook 3.9). */
    Pull pullAtReset(int gpio);

    /** What the pin does by itself at every boot, or an empty text (handbook 3.11). */
    String lifeAtBoot(int gpio);

    /** What the pin does besides where the board's image switches a bus on, or an empty text (handbook 3.11). */
    String lifeIfEnabled(int gpio);

    /** Why these facts may be wrong for this board, in one sentence, or an empty text. */
    String caveat();

    /** Whether the pin does something by itself at every boot, whatever the image. */
    default boolean isBusyAtBoot(final int gpio) {
        return !lifeAtBoot(gpio).isEmpty();
    }

    /** Whether the pin belongs to a bus that the image may switch on. */
    default boolean isBusyIfEnabled(final int gpio) {
        return !lifeIfEnabled(gpio).isEmpty();
    }

    default boolean isOnHeader(final int gpio) {
        return headerPin(gpio).isPresent();
    }
}
