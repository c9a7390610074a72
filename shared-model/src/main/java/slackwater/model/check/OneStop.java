package slackwater.model.check;

import java.util.List;
import java.util.Locale;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.finding.Findings;
import slackwater.model.kind.InputFamily;

/** There is one stop for the whole rig, hard-wired through every output supply, and every controller sees it (S4). */
final class OneStop implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        final List<Input> loops = draft.rig().inputs().stream()
                .filter(input -> input.family() == InputFamily.STOP_LOOP)
                .toList();
        loops.stream().skip(1).forEach(loop -> second(draft, loops.get(0), loop, findings));
        loops.forEach(loop -> inZone(draft, loop, findings));
        loops.stream().limit(1).forEach(loop -> everywhere(draft, loop, findings));
        copies(draft, findings);
    }

    private static void second(final Draft draft, final Input first, final Input loop, final Findings findings) {
        findings.error(
                "second-stop",
                draft.where().table(Say.table(loop)),
                Say.words(
                        Say.quoted(loop.name()) + " is a second stop loop",
                        "with two loops, pressing one stop leaves the other half of the yard moving (S4); the first is "
                                + Say.quoted(first.name()) + draft.atText(Say.table(first), "kind"),
                        "wire all stop buttons in one loop through every output supply, and list its pins in one"
                                + " input"));
    }

    private static void inZone(final Draft draft, final Input loop, final Findings findings) {
        loop.zone()
                .ifPresent(zone -> findings.error(
                        "stop-in-zone",
                        draft.at(Say.table(loop), "zone"),
                        Say.words(
                                "the stop loop " + Say.quoted(loop.name()) + " is put into zone " + Say.quoted(zone),
                                "a stop belongs to the whole rig: whoever presses it does not know zones (S4)",
                                "leave zone out")));
    }

    private static void everywhere(final Draft draft, final Input loop, final Findings findings) {
        final Rig rig = draft.rig();
        final List<String> blind = Homes.of(
                        rig, rig.outputs().stream().map(Output::name).toList())
                .stream()
                .filter(controller -> !loop.controllers().contains(controller))
                .toList();
        if (!blind.isEmpty()) {
            findings.error(
                    "stop-not-everywhere",
                    draft.at(Say.table(loop), "pins"),
                    Say.words(
                            "the stop loop " + Say.quoted(loop.name()) + " is not sensed by " + Say.quoted(blind),
                            "a controller that does not see the stop would go on as soon as the loop closes (S4)",
                            "wire a contact of the loop's relay to each controller and add it to pins"));
        }
    }

    private static void copies(final Draft draft, final Findings findings) {
        if (draft.rig().zones().size() < 2) {
            return;
        }
        for (final Input input : draft.rig().inputs()) {
            if (input.family() == InputFamily.BUTTON && input.zone().isPresent() && saysStop(input.name())) {
                findings.warning(
                        "stop-copied",
                        draft.where().table(Say.table(input)),
                        Say.words(
                                Say.quoted(input.name()) + " sounds like a stop for zone "
                                        + Say.quoted(input.zone().get()) + " alone",
                                "whoever presses a stop expects the whole rig to stop, through wires and not through a"
                                        + " program (S4)",
                                "put the button into the stop loop, or name it after what it does, such as"
                                        + " stand-down"));
            }
        }
    }

    private static boolean saysStop(final String name) {
        return List.of(name.toLowerCase(Locale.ROOT).split("-", -1)).stream()
                .anyMatch(word -> word.equals("stop") || word.equals("estop"));
    }
}
