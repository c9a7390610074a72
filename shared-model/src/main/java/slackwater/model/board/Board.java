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

    /** The pull at reset (handbook 3.9). */
    Pull pullAtReset(int gpio);

    /** What the pin does by itself at boot, or an empty text (handbook 3.11). */
    String lifeAtBoot(int gpio);
}
