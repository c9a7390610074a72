package slackwater.simulator.budget;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of a budget.
 *
 * @param group what it belongs to, such as air
 * @param about what is judged
 * @param asks what the rig asks for
 * @param has what there is
 * @param verdict what it comes to
 * @param formula the formula's name and where it is from
 * @param assumed what nobody said and was therefore taken as usual, each with its source
 * @param advice what would make it fit, or what to look at
 */
public record Line(
        Group group,
        String about,
        Optional<Amount> asks,
        Optional<Amount> has,
        Verdict verdict,
        String formula,
        List<String> assumed,
        Optional<String> advice) {

    /** The parts of a budget, in the order in which they are told. */
    public enum Group {
        AIR,
        STROKES,
        FOG,
        LOW_FOG,
        MIST,
        CURRENT,
        CABLES,
        PINS,
        CONTACTS,
        FLASHES,
        TIMING,
        EVENING;

        /** As a heading. */
        public String word() {
            final String words = name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
            return this == LOW_FOG ? "will it stay low?" : words;
        }
    }

    public Line {
        assumed = List.copyOf(assumed);
    }

    /** Which share of what there is stays unused; negative where it falls short; empty where nothing is compared. */
    public OptionalDouble margin() {
        if (asks.isEmpty() || has.isEmpty() || verdict == Verdict.TOLD) {
            return OptionalDouble.empty();
        }
        final double hasSi = has.get().si();
        if (Double.isInfinite(hasSi)) {
            return OptionalDouble.of(1);
        }
        return hasSi == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(1 - asks.get().si() / hasSi);
    }
}
