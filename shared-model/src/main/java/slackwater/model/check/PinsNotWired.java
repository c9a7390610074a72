package slackwater.model.check;

import java.util.List;
import slackwater.model.Controller;
import slackwater.model.finding.Findings;

/** Pins may be left out until somebody wires the rig; then the tool proposes them. */
final class PinsNotWired implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Controller controller : draft.rig().controllers()) {
            final List<String> without = PinUse.on(draft.rig(), controller).stream()
                    .filter(use -> use.gpio().isEmpty())
                    .map(PinUse::who)
                    .toList();
            if (!without.isEmpty()) {
                findings.warning(
                        "not-wired",
                        draft.where().table("controller." + controller.name()),
                        Say.words(
                                "on controller " + Say.quoted(controller.name()) + " no pin is given for "
                                        + String.join(", ", without),
                                "simulate and rehearse go on without pins; run refuses",
                                "slackwater wiring RIG --propose-pins fills them in"));
            }
        }
    }
}
