package slackwater.wiring;

import java.util.ArrayList;
import java.util.List;
import slackwater.model.Controller;
import slackwater.model.Rig;

/**
 * Pins for everything that has none, so that every output rests from power-on (handbook 3.9, 3.11) and pins already
 * chosen stay as they are. The same rig gives the same proposal: earlier in the rig chooses first.
 *
 * @param proposed by controller, each the hold-up first, then outputs, then inputs, in the order of the rig
 * @param problems one sentence for each thing that no free pin suits, and what to do about it
 */
public record PinProposal(List<Proposed> proposed, List<String> problems) {

    public PinProposal {
        proposed = List.copyOf(proposed);
        problems = List.copyOf(problems);
    }

    public static PinProposal of(final Rig rig) {
        final List<Proposed> proposed = new ArrayList<>();
        final List<String> problems = new ArrayList<>();
        for (final Controller controller : rig.controllers()) {
            final FreePins free = new FreePins(rig, controller);
            proposed.addAll(free.choose());
            problems.addAll(free.problems());
        }
        return new PinProposal(proposed, problems);
    }
}
