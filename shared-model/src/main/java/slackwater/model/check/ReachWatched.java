package slackwater.model.check;

import slackwater.model.Output;
import slackwater.model.finding.Findings;

/** What can touch somebody has a sensor that sees them (S1). */
final class ReachWatched implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            final boolean isWatched = draft.rig().inputs().stream()
                    .anyMatch(input -> input.reachOf().contains(output.name()));
            if (output.family().moves() && output.reachM() > 0 && !isWatched) {
                findings.warning(
                        "reach-unwatched",
                        draft.at(Say.table(output), "reach"),
                        Say.words(
                                Say.quoted(output.name()) + " reaches " + Say.number(output.reachM(), 3)
                                        + " m around it, and no input watches that",
                                "it would move whoever stands there",
                                "add reach-of = [" + Say.quoted(output.name())
                                        + "] to the beam or curtain before it, or" + " keep people out with a rail"));
            }
        }
    }
}
