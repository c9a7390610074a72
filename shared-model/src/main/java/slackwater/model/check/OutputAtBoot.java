package slackwater.model.check;

import slackwater.model.Contact;
import slackwater.model.Controller;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.board.BootState;
import slackwater.model.finding.Findings;
import slackwater.model.finding.Findings.Words;

/**
 * Nothing may be energised between power-on and the moment the program takes the pins (handbook 3.9 and 3.12). Pins
 * with a life of their own are another rule's.
 */
final class OutputAtBoot implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Controller controller : draft.rig().controllers()) {
            for (final Output output : draft.rig().outputsOf(controller.name())) {
                final int gpio = output.pin().orElse(-1);
                if (controller.board().isOnHeader(gpio) && !controller.board().isBusyAtBoot(gpio)) {
                    look(draft, controller, output, findings);
                }
            }
        }
    }

    private static void look(
            final Draft draft, final Controller controller, final Output output, final Findings findings) {
        final BootState boot = BootState.of(controller.board(), output.pin().orElseThrow(), output.energisedLevel());
        switch (boot.verdict()) {
            case AT_REST -> {}
            case UNCERTAIN ->
                findings.warning(
                        "uncertain-at-boot",
                        draft.at(Say.table(output), "pin"),
                        words(draft.rig(), controller, output, boot, " may be energised while the board boots"));
            case ENERGISED ->
                findings.error(
                        "energised-at-boot",
                        draft.at(Say.table(output), "pin"),
                        words(draft.rig(), controller, output, boot, " would be energised while the board boots"));
        }
    }

    private static Words words(
            final Rig rig, final Controller controller, final Output output, final BootState boot, final String claim) {
        final String load = output.contact() == Contact.NORMALLY_CLOSED
                ? "; with its normally closed contact that switches the load off"
                : "";
        return Say.words(
                Say.quoted(output.name()) + claim,
                withoutEnd(boot.reason()) + load,
                PinUse.on(rig, controller).stream()
                        .filter(use -> use.table().equals(Say.table(output)))
                        .findFirst()
                        .map(use -> use.fix(rig, controller))
                        .orElse(""));
    }

    private static String withoutEnd(final String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
