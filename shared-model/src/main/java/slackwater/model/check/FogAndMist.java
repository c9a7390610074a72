package slackwater.model.check;

import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

/** No pump into a cold fog maker, no discs in a dry tray. */
final class FogAndMist implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            if (output.family() == Family.PUMP
                    && output.facts().text("heated-by").isEmpty()
                    && !needs(draft.rig(), output, InputFamily.READY)) {
                cold(draft, output, findings);
            } else if (output.family() == Family.MISTER && !needs(draft.rig(), output, InputFamily.LEVEL)) {
                dry(draft, output, findings);
            }
        }
    }

    private static void cold(final Draft draft, final Output output, final Findings findings) {
        findings.warning(
                "cold-fog",
                draft.where().table(Say.table(output)),
                Say.words(
                        Say.quoted(output.name()) + " may pump into a cold fog maker",
                        "cold fluid is not fogged: it drips on the path, and people slip",
                        "add heated-by = \"...\", the heater, or a permissive that needs the fog maker's ready"
                                + " signal"));
    }

    private static void dry(final Draft draft, final Output output, final Findings findings) {
        findings.error(
                "dry-mist",
                draft.where().table(Say.table(output)),
                Say.words(
                        "nothing keeps " + Say.quoted(output.name()) + " from running dry",
                        "ultrasonic discs without water destroy themselves within a minute (common practice, no"
                                + " source)",
                        "add a level switch and a [permissive.NAME] with outputs = [" + Say.quoted(output.name())
                                + "] that needs it"));
    }

    private static boolean needs(final Rig rig, final Output output, final InputFamily family) {
        return rig.interlocks().stream()
                .filter(Interlock.Permissive.class::isInstance)
                .map(Interlock.Permissive.class::cast)
                .filter(permissive -> permissive.outputs().contains(output.name()))
                .flatMap(permissive -> permissive.needs().stream())
                .filter(condition -> condition.isActive())
                .flatMap(condition -> rig.input(condition.input()).stream())
                .anyMatch(input -> input.family() == family);
    }
}
