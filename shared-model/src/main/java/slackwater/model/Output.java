package slackwater.model;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.kind.Family;
import slackwater.model.kind.OutputKind;

/**
 * Something that a controller energises. One record for every kind; what is particular to a kind is in its facts.
 *
 * @param name unique in the rig
 * @param pin GPIO, or empty while it is not wired
 * @param energisedLevel the electrical level that energises it
 * @param contact which contact the load uses
 * @param rest how it comes to rest
 * @param limits the driver's own limits
 * @param load what it draws
 * @param at where it stands on the plan
 * @param reachM radius around {@code at} in which its movement could touch somebody, metres; 0 where nothing moves
 * @param feedback what tells whether it is really energised
 * @param unguarded why no interlock names it, in the builder's own words
 * @param facts what its kind's own keys said
 */
public record Output(
        String name,
        OutputKind kind,
        String zone,
        String controller,
        OptionalInt pin,
        Level energisedLevel,
        Contact contact,
        Rest rest,
        Limits limits,
        Load load,
        Optional<Point> at,
        double reachM,
        Feedback feedback,
        Optional<String> unguarded,
        Facts facts) {

    /**
     * How an output comes to rest (S1).
     *
     * @param onPowerLoss what a moving part does without power
     * @param onAirLoss what it does without air
     * @param restraint what keeps a falling part from hurting somebody
     * @param within the longest time from de-energising to rest; empty where the kind implies it
     */
    public record Rest(
            Optional<Return> onPowerLoss,
            Optional<Return> onAirLoss,
            Optional<String> restraint,
            Optional<Duration> within) {
        public static final Rest UNSAID =
                new Rest(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** What tells whether an output is really energised (S10). */
    public enum Feedback {
        /** Nothing does; an echo of the last write counts as nothing. */
        NONE,
        /** The pad's own level. */
        PAD,
        /** A contact or current sensor at the load. */
        LOAD
    }

    public Family family() {
        return kind.family();
    }

    /** The level written while the output is at rest. */
    public Level restLevel() {
        return energisedLevel.opposite();
    }
}
