package slackwater.model.check;

import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** A release is spent after one shot, until somebody has hung it again and says so (S15). */
final class ReleaseHungAgain implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            final boolean canBeHung = draft.rig().inputs().stream().anyMatch(input -> hangs(input, output));
            if (output.family() == Family.RELEASE && !canBeHung) {
                findings.warning(
                        "release-never-hung",
                        draft.where().table(Say.table(output)),
                        Say.words(
                                "no input confirms that " + Say.quoted(output.name()) + " has been hung again",
                                "after its first release it stays spent for good (S15)",
                                "add a button with use = \"hung\" and of = " + Say.quoted(output.name())));
            }
        }
    }

    /** A button that names no release hangs every release of its controller. */
    private static boolean hangs(final Input input, final Output output) {
        return input.use() == Input.Use.HUNG
                && input.controllers().contains(output.controller())
                && input.facts().text("of").map(output.name()::equals).orElse(true);
    }
}
