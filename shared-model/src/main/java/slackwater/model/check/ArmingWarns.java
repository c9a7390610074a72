package slackwater.model.check;

import java.time.Duration;
import java.util.List;
import slackwater.model.Arming;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

/** Before anything may move, light and sound say so for long enough; and somebody or something can arm the rig (S6). */
final class ArmingWarns implements Rule {
    private static final Duration SHORTEST_WARNING = Duration.ofSeconds(1);

    @Override
    public void look(final Draft draft, final Findings findings) {
        final Arming arming = draft.rig().arming();
        for (int at = 0; at < arming.warnsWith().size(); at++) {
            final String key = "warns-with[" + at + "]";
            draft.rig()
                    .output(arming.warnsWith().get(at))
                    .filter(output -> !canWarn(output))
                    .ifPresent(output -> wrong(draft, key, output, findings));
        }
        if (arming.warning().compareTo(SHORTEST_WARNING) < 0) {
            tooShort(draft, arming, findings);
        }
        final List<Output> couldWarn =
                draft.rig().outputs().stream().filter(ArmingWarns::canWarn).toList();
        final boolean moves = draft.rig().outputs().stream()
                .anyMatch(output -> output.family().moves());
        if (arming.warnsWith().isEmpty() && moves && !couldWarn.isEmpty()) {
            nobodyWarned(draft, couldWarn, findings);
        }
        if (hasPanel(draft.rig()) && draft.show().schedule().isEmpty() && !canArm(draft.rig())) {
            nothingArms(draft, findings);
        }
    }

    private static boolean canWarn(final Output output) {
        return output.family() == Family.LAMP || output.family() == Family.SOUNDER;
    }

    private static void wrong(final Draft draft, final String key, final Output output, final Findings findings) {
        findings.error(
                "cannot-warn",
                draft.at("arming", key),
                Say.words(
                        Say.quoted(output.name()) + " cannot warn: it is no lamp and no sounder",
                        "the warning comes before anything may move, flash or fog (S6)",
                        "name lamps and sounders only"));
    }

    private static void tooShort(final Draft draft, final Arming arming, final Findings findings) {
        findings.error(
                "warning-short",
                draft.at("arming", "warning"),
                Say.words(
                        "warning=" + Say.time(arming.warning()) + " < 1 s",
                        "nobody can step back that fast (S6)",
                        "take 5 s, or at least 1 s"));
    }

    private static void nobodyWarned(final Draft draft, final List<Output> couldWarn, final Findings findings) {
        findings.warning(
                "nobody-warned",
                draft.at("arming", "warns-with"),
                Say.words(
                        "nothing announces that the rig is about to move",
                        "somebody may still stand at a prop when the rig arms (S6)",
                        "add [arming] with warns-with, such as "
                                + Say.quoted(couldWarn.get(0).name())));
    }

    /**
     * A rig on a bench has neither button nor key, and is armed from the page; one with a panel is meant to run by
     * itself.
     */
    private static boolean hasPanel(final Rig rig) {
        return rig.inputs().stream()
                .anyMatch(input -> input.family() == InputFamily.BUTTON || input.family() == InputFamily.KEY);
    }

    private static boolean canArm(final Rig rig) {
        return rig.inputs().stream().anyMatch(input -> input.use() == Input.Use.ARM);
    }

    private static void nothingArms(final Draft draft, final Findings findings) {
        findings.warning(
                "nothing-arms",
                draft.at("", "name"),
                Say.words(
                        "the rig has no key that arms it, and the show no schedule",
                        "without a network nobody could open it (S24)",
                        "add a key switch with use = \"arm\", or [schedule] to the show"));
    }
}
