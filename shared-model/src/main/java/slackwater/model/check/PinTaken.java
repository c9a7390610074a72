package slackwater.model.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slackwater.model.Controller;
import slackwater.model.finding.Findings;

/** A GPIO can be wired to one thing only. */
final class PinTaken implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        draft.rig().controllers().forEach(controller -> look(draft, controller, findings));
    }

    private static void look(final Draft draft, final Controller controller, final Findings findings) {
        final Map<Integer, PinUse> first = new HashMap<>();
        for (final PinUse use : inOrderOfTheFile(draft, PinUse.on(draft.rig(), controller))) {
            if (use.gpio().isEmpty()) {
                continue;
            }
            final int gpio = use.gpio().getAsInt();
            final PinUse before = first.putIfAbsent(gpio, use);
            if (before != null) {
                findings.error(
                        "pin-taken",
                        draft.at(use.table(), use.key()),
                        Say.words(
                                "pin " + gpio + " of controller " + Say.quoted(controller.name()) + " is already taken",
                                before.who() + " uses pin " + gpio + draft.atText(before.table(), before.key()) + ", "
                                        + use.who() + " uses it again",
                                use.fix(draft.rig(), controller)));
            }
        }
    }

    /** So that the finding stands at the later place, where a person added something, and names the earlier. */
    private static List<PinUse> inOrderOfTheFile(final Draft draft, final List<PinUse> uses) {
        final List<PinUse> sorted = new ArrayList<>(uses);
        sorted.sort(Comparator.comparingInt(
                use -> draft.at(use.table(), use.key()).map(at -> at.line()).orElse(0)));
        return sorted;
    }
}
