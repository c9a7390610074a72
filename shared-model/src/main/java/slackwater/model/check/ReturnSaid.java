package slackwater.model.check;

import java.util.Optional;
import slackwater.model.Output;
import slackwater.model.Return;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** Rest can move: a moving output says what it does without power and without air, and what restrains a fall (S1). */
final class ReturnSaid implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            if (output.family().moves()) {
                powerLoss(draft, output, findings);
                airLoss(draft, output, findings);
            }
            restraint(draft, output, "on-power-loss", output.rest().onPowerLoss(), findings);
            restraint(draft, output, "on-air-loss", output.rest().onAirLoss(), findings);
        }
    }

    private static void powerLoss(final Draft draft, final Output output, final Findings findings) {
        if (output.rest().onPowerLoss().isEmpty()) {
            findings.error(
                    "no-on-power-loss",
                    draft.at(Say.table(output), "on-power-loss"),
                    Say.words(
                            Say.quoted(output.name()) + " does not say what it does when power goes",
                            "a stop, a crash and a power cut all end there, and what moves can hit somebody (S1)",
                            "add on-power-loss = \"spring-returns\", \"air-drives\", \"falls\" or \"stays\""));
        }
    }

    private static void airLoss(final Draft draft, final Output output, final Findings findings) {
        if (output.family() == Family.VALVE
                && output.facts().siOr("moving-mass", 0) > 0
                && output.rest().onAirLoss().isEmpty()) {
            findings.warning(
                    "no-on-air-loss",
                    draft.at(Say.table(output), "on-air-loss"),
                    Say.words(
                            Say.quoted(output.name()) + " moves a mass and does not say what that does when air goes",
                            "a hose that comes off and the dump valve both end there (S1)",
                            "add on-air-loss = \"spring-returns\", \"air-drives\", \"falls\" or \"stays\""));
        }
    }

    private static void restraint(
            final Draft draft,
            final Output output,
            final String key,
            final Optional<Return> does,
            final Findings findings) {
        if (does.equals(Optional.of(Return.FALLS))
                && output.rest().restraint().filter(text -> !text.isBlank()).isEmpty()) {
            findings.error(
                    "falls-unrestrained",
                    draft.at(Say.table(output), key),
                    Say.words(
                            Say.quoted(output.name()) + " falls, and no restraint is named",
                            key + " = \"falls\" lets gravity move it, whoever stands below (S1)",
                            "add restraint = \"...\": what slows or catches it, such as a throttled exhaust and a"
                                    + " rubber stop"));
        }
    }
}
