package slackwater.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slackwater.model.Condition;
import slackwater.model.Step;

/** Walks over the steps of a cue. */
final class Steps {

    private Steps() {}

    /** Every energise step, those within a choice too. */
    static List<Step.Energise> energising(final List<Step> steps) {
        return flat(steps)
                .filter(Step.Energise.class::isInstance)
                .map(Step.Energise.class::cast)
                .toList();
    }

    /** Names of the outputs that are wished for, each once. */
    static List<String> outputs(final List<Step> steps) {
        return energising(steps).stream()
                .flatMap(step -> step.outputs().stream())
                .distinct()
                .toList();
    }

    /** What is waited for. */
    static List<Condition> awaited(final List<Step> steps) {
        return flat(steps)
                .filter(Step.Await.class::isInstance)
                .map(step -> ((Step.Await) step).condition())
                .toList();
    }

    /**
     * The parts of a cue whose times are known beforehand: between two awaits or choices nobody knows how long it takes. A
     * choice is a part of its own.
     */
    static List<List<Step>> stretches(final List<Step> steps) {
        final List<List<Step>> stretches = new ArrayList<>();
        List<Step> open = new ArrayList<>();
        for (final Step step : steps) {
            if (step instanceof Step.Energise || step instanceof Step.Pause) {
                open.add(step);
                continue;
            }
            stretches.add(open);
            open = new ArrayList<>();
            if (step instanceof Step.OneOf oneOf) {
                oneOf.choices().forEach(choice -> stretches.addAll(stretches(choice)));
            }
        }
        stretches.add(open);
        return stretches;
    }

    private static Stream<Step> flat(final List<Step> steps) {
        return steps.stream()
                .flatMap(step -> step instanceof Step.OneOf oneOf
                        ? oneOf.choices().stream().flatMap(Steps::flat)
                        : Stream.of(step));
    }
}
