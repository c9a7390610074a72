package slackwater.model.check;

import slackwater.model.Controller;
import slackwater.model.finding.Findings;

/** Some pins do something by themselves before any program runs (handbook 3.11). */
final class PinBusyAtBoot implements Rule {
    private static final int LAST_RESERVED = 1;
    private static final int SERIAL_OUT = 14;
    private static final int SERIAL_IN = 15;

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Controller controller : draft.rig().controllers()) {
            for (final PinUse use : PinUse.on(draft.rig(), controller)) {
                final int gpio = use.gpio().orElse(-1);
                if (controller.board().isOnHeader(gpio) && controller.board().isBusyAtBoot(gpio)) {
                    look(draft, controller, use, findings);
                }
            }
        }
    }

    private static void look(
            final Draft draft, final Controller controller, final PinUse use, final Findings findings) {
        final int gpio = use.gpio().orElseThrow();
        final Findings.Words words = Say.words(
                "pin " + gpio + " has a life of its own while the board boots",
                "GPIO" + gpio + ": " + controller.board().lifeAtBoot(gpio) + " (handbook 3.11); " + use.who()
                        + " is wired to it",
                use.fix(draft.rig(), controller));
        if (gpio <= LAST_RESERVED || use.isOutput()) {
            findings.error("pin-busy-at-boot", draft.at(use.table(), use.key()), words);
        } else if (gpio == SERIAL_OUT || (gpio != SERIAL_IN && !use.isPulledUpAtRest())) {
            findings.warning("pin-busy-at-boot", draft.at(use.table(), use.key()), words);
        }
    }
}
