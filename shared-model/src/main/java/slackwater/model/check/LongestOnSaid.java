package slackwater.model.check;

import slackwater.model.Output;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** What can overheat, flood or hold somebody has a longest time on; an air supply has none (S15). */
final class LongestOnSaid implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            final boolean hasLongestOn = output.limits().longestOn().isPresent();
            if (needsLongestOn(output.family()) && !hasLongestOn) {
                findings.error(
                        "no-longest-on",
                        draft.at(Say.table(output), "longest-on"),
                        Say.words(
                                Say.quoted(output.name()) + " has no longest-on",
                                "nothing would end it if a cue or a sensor went on asking",
                                "add longest-on, the longest time it may ever be energised, such as \"2 s\""));
            } else if (output.family() == Family.AIR_SUPPLY && hasLongestOn) {
                findings.warning(
                        "longest-on-exempt",
                        draft.at(Say.table(output), "longest-on"),
                        Say.words(
                                Say.quoted(output.name()) + " is an air supply and needs no longest-on",
                                "when it ends, every prop loses its air in the middle of a greeting (S15)",
                                "leave longest-on out: the stop and standing down exhaust it"));
            }
        }
    }

    private static boolean needsLongestOn(final Family family) {
        return switch (family) {
            case AIR_SUPPLY, HEATER, LAMP, FAN -> false;
            case VALVE, PUMP, STROBE, MISTER, RELEASE, SOUNDER, CONTACT -> true;
        };
    }
}
