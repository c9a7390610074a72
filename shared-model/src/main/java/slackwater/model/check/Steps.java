package slackwater.model.check;

import java.util.ArrayList;
import java.util.List;
import slackwater.model.Step;

/** Walks over the steps of a cue, those within a choice too, and knows where each was written. */
final class Steps {

    /**
     * A step and where it was written.
     *
     * @param path the key within the cue's table, such as {@code steps[2]} or {@code steps[0].one-of[1][0]}
     */
    record Placed<S extends Step>(String path, S step) {

        /** The path of one of its keys. */
        String key(final String name) {
            return path + "." + name;
        }
    }

    private Steps() {}

    /** The steps of a cue's table; a choice is one step. */
    static List<Placed<Step>> of(final List<Step> steps) {
        return of("steps", steps);
    }

    /** The steps of each choice. */
    static List<List<Placed<Step>>> choices(final String path, final Step.OneOf oneOf) {
        final List<List<Placed<Step>>> choices = new ArrayList<>();
        for (int at = 0; at < oneOf.choices().size(); at++) {
            choices.add(of(path + ".one-of[" + at + "]", oneOf.choices().get(at)));
        }
        return choices;
    }

    /** Every step of one class, in the order in which they were written. */
    static <S extends Step> List<Placed<S>> all(final Class<S> wanted, final List<Step> steps) {
        final List<Placed<S>> found = new ArrayList<>();
        collect(wanted, of(steps), found);
        return found;
    }

    /**
     * The parts of a cue whose times are known beforehand: between two awaits or choices nobody knows how long it
     * takes. A choice is a part of its own.
     */
    static List<List<Placed<Step>>> stretches(final List<Placed<Step>> steps) {
        final List<List<Placed<Step>>> stretches = new ArrayList<>();
        List<Placed<Step>> open = new ArrayList<>();
        for (final Placed<Step> placed : steps) {
            if (placed.step() instanceof Step.Energise || placed.step() instanceof Step.Pause) {
                open.add(placed);
                continue;
            }
            stretches.add(open);
            open = new ArrayList<>();
            if (placed.step() instanceof Step.OneOf oneOf) {
                choices(placed.path(), oneOf).forEach(choice -> stretches.addAll(stretches(choice)));
            }
        }
        stretches.add(open);
        return stretches;
    }

    private static List<Placed<Step>> of(final String path, final List<Step> steps) {
        final List<Placed<Step>> placed = new ArrayList<>();
        for (int at = 0; at < steps.size(); at++) {
            placed.add(new Placed<>(path + "[" + at + "]", steps.get(at)));
        }
        return placed;
    }

    private static <S extends Step> void collect(
            final Class<S> wanted, final List<Placed<Step>> steps, final List<Placed<S>> found) {
        for (final Placed<Step> placed : steps) {
            if (wanted.isInstance(placed.step())) {
                found.add(new Placed<>(placed.path(), wanted.cast(placed.step())));
            }
            if (placed.step() instanceof Step.OneOf oneOf) {
                choices(placed.path(), oneOf).forEach(choice -> collect(wanted, choice, found));
            }
        }
    }
}
