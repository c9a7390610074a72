package slackwater.model;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.kind.InputFamily;
import slackwater.model.kind.InputKind;

/**
 * Something that a controller senses.
 *
 * @param name unique in the rig
 * @param zone the zone it belongs to; empty for a stop loop, which belongs to the whole rig
 * @param pins GPIO by controller name; one entry for all but a stop loop, which every controller senses; no entry where not yet wired
 * @param controllers names of the controllers it is wired to
 * @param activeLevel the electrical level that means active
 * @param pull the pull that the program asks the pin for
 * @param proving how long it must hold before it is believed
 * @param use what a button or a key is for
 * @param reachOf outputs whose reach it watches; active means somebody is in the reach
 * @param sees what it sees on the plan
 * @param facts what its kind's own keys said
 */
public record Input(
        String name,
        InputKind kind,
        Optional<String> zone,
        List<String> controllers,
        Map<String, Integer> pins,
        Level activeLevel,
        Pull pull,
        Proving proving,
        Use use,
        List<String> reachOf,
        Sees sees,
        Facts facts) {

    /**
     * How an input earns belief (S7, S23).
     *
     * @param activeAfter unbroken time until proven active
     * @param inactiveAfter unbroken time until proven inactive
     * @param warmUp time from power-on during which it is neither
     * @param stuckAfter active for longer than this it is faulted, and neither
     */
    public record Proving(
            Duration activeAfter, Duration inactiveAfter, Duration warmUp, Optional<Duration> stuckAfter) {}

    /** What a button or a key switch does; {@code SENSE} for everything else. */
    public enum Use {
        SENSE,
        RESET,
        ARM,
        STAND_DOWN,
        /** Confirms that a release has been hung again. */
        HUNG,
        /** Tells that a bottle or a tray has been filled up. */
        REFILL
    }

    /** Where on the plan it looks; both empty where positions were left out. */
    public record Sees(Optional<Field> field, Optional<Ray> ray) {
        public static final Sees NOTHING = new Sees(Optional.empty(), Optional.empty());
    }

    public Input {
        controllers = List.copyOf(controllers);
        pins = Map.copyOf(pins);
        reachOf = List.copyOf(reachOf);
    }

    public InputFamily family() {
        return kind.family();
    }

    /** The GPIO on one controller, or empty while it is not wired. */
    public OptionalInt pinOn(final String controller) {
        final Integer pin = pins.get(controller);
        return pin == null ? OptionalInt.empty() : OptionalInt.of(pin);
    }
}
