package slackwater.model.check;

import java.util.List;
import java.util.Optional;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** An output is named by an interlock, or its builder says in words why none is needed. */
final class Guarded implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            final List<String> guards = guards(draft.rig(), output);
            final Optional<String> reason = output.unguarded().filter(text -> !text.isBlank());
            if (guards.isEmpty() && reason.isEmpty()) {
                findings.error(
                        "unguarded",
                        draft.at(Say.table(output), "unguarded"),
                        Say.words(
                                "no interlock names " + Say.quoted(output.name()),
                                "whatever stands in its way, it would move, heat or flash",
                                "add a [permissive.NAME] or [trip.NAME] with outputs = [" + Say.quoted(output.name())
                                        + "], or unguarded = \"...\" with your reason"));
            } else if (!guards.isEmpty() && reason.isPresent()) {
                findings.warning(
                        "guarded-yet-unguarded",
                        draft.at(Say.table(output), "unguarded"),
                        Say.words(
                                Say.quoted(output.name()) + " gives a reason to be unguarded, yet "
                                        + String.join(", ", guards) + " guards it",
                                "whoever reads the reason believes that nothing guards it",
                                "leave unguarded out"));
            }
        }
    }

    /** Exclusions and load limits let an output run sooner or later whatever happens, so they are no guards. */
    private static List<String> guards(final Rig rig, final Output output) {
        return rig.interlocks().stream()
                .filter(interlock -> interlock.outputs().contains(output.name()))
                .filter(interlock -> isGuard(interlock, output))
                .map(Say::table)
                .toList();
    }

    private static boolean isGuard(final Interlock interlock, final Output output) {
        return interlock instanceof Interlock.Permissive
                || interlock instanceof Interlock.Trip
                || (interlock instanceof Interlock.FlashLimit && output.family() == Family.STROBE);
    }
}
