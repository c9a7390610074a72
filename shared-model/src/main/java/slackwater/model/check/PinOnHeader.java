package slackwater.model.check;

import slackwater.model.Controller;
import slackwater.model.finding.Findings;

/** A pin must be where a wire can reach it. */
final class PinOnHeader implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Controller controller : draft.rig().controllers()) {
            for (final PinUse use : PinUse.on(draft.rig(), controller)) {
                use.gpio().ifPresent(gpio -> look(draft, controller, use, findings));
            }
        }
    }

    private static void look(
            final Draft draft, final Controller controller, final PinUse use, final Findings findings) {
        final int gpio = use.gpio().orElseThrow();
        if (controller.board().isOnHeader(gpio)) {
            return;
        }
        findings.error(
                "pin-not-on-header",
                draft.at(use.table(), use.key()),
                Say.words(
                        "pin " + gpio + " is not on the header of a "
                                + controller.board().word(),
                        use.who() + " could not be wired to it",
                        use.fix(draft.rig(), controller)));
    }
}
