package slackwater.model.check;

import java.util.List;
import slackwater.model.finding.Finding;
import slackwater.model.finding.Findings;

/** All rules. */
public final class Rules {
    private static final List<Rule> ALL = List.of(
            new PinTaken(),
            new PinOnHeader(),
            new PinBusyAtBoot(),
            new OutputAtBoot(),
            new PinsNotWired(),
            new ReturnSaid(),
            new FallingEnergy(),
            new LongestOnSaid(),
            new Guarded(),
            new GuardsAtHome(),
            new SharedLimits(),
            new LoadFits(),
            new OneStop(),
            new GoingOnAlone(),
            new NothingBelowAScan(),
            new CuePlaces(),
            new CueCanRun(),
            new CueKeepsLimits(),
            new StrobeFlashes(),
            new BlinkFlashes(),
            new ReachDistance(),
            new ReachWatched(),
            new RestIntoReach(),
            new ReleaseHungAgain(),
            new Refills(),
            new FogAndMist(),
            new PossibleFigures(),
            new OpeningHours(),
            new ArmingWarns());

    private Rules() {}

    /** Every rule, in the order in which they look. */
    public static List<Rule> all() {
        return ALL;
    }

    /** What every rule says about a rig and its show, in the order of the files. */
    public static List<Finding> check(final Draft draft) {
        final Findings findings = new Findings(draft.where());
        ALL.forEach(rule -> rule.look(draft, findings));
        return findings.sorted();
    }
}
