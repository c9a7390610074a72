package slackwater.simulator.evening;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slackwater.model.Cue;
import slackwater.model.Step;

/** The outputs that a cue's steps may energise. */
final class CueOutputs {
    private CueOutputs() {}

    static List<String> of(final Cue cue) {
        final Set<String> names = new LinkedHashSet<>();
        collect(cue.steps(), names);
        return List.copyOf(names);
    }

    private static void collect(final List<Step> steps, final Set<String> names) {
        for (final Step step : steps) {
            if (step instanceof Step.Energise energise) {
                names.addAll(energise.outputs());
            } else if (step instanceof Step.OneOf oneOf) {
                oneOf.choices().forEach(choice -> collect(choice, names));
            }
        }
    }
}
