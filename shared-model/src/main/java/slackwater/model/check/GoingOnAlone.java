package slackwater.model.check;

import slackwater.model.Zone;
import slackwater.model.finding.Findings;

/** A zone that goes on without its network can be stopped by wires alone (S24). */
final class GoingOnAlone implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Zone zone : draft.rig().zones()) {
            if (zone.whenAlone() == Zone.WhenAlone.GO_ON && !zone.hasHardWiredStop()) {
                findings.error(
                        "alone-without-stop",
                        draft.at("zone." + zone.name(), "when-alone"),
                        Say.words(
                                "zone " + Say.quoted(zone.name())
                                        + " goes on when its network is gone, without a hard-wired stop",
                                "nobody could stop it from afar any more (S24)",
                                "wire a stop through its output supply and write hard-wired-stop = true, or"
                                        + " when-alone = \"rest\""));
            }
        }
    }
}
