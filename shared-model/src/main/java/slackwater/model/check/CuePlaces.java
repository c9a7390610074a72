package slackwater.model.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slackwater.model.Cue;
import slackwater.model.Output;
import slackwater.model.Step;
import slackwater.model.check.Steps.Placed;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** A cue wishes for outputs of its own zone and one controller, listens there, and leaves automatic outputs alone. */
final class CuePlaces implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Cue cue : draft.show().cues()) {
            final Map<String, String> firstWish = new LinkedHashMap<>();
            for (final Placed<Step.Energise> placed : Steps.all(Step.Energise.class, cue.steps())) {
                placed.step().outputs().forEach(name -> firstWish.putIfAbsent(name, placed.key("energise")));
            }
            firstWish.forEach((name, key) ->
                    draft.rig().output(name).ifPresent(output -> output(draft, new Wish(cue, key), output, findings)));
            final List<String> homes = Homes.of(draft.rig(), firstWish.keySet());
            if (homes.size() > 1) {
                across(draft, cue, homes, findings);
            } else if (homes.size() == 1) {
                inputs(draft, cue, homes.get(0), findings);
            }
        }
    }

    /** Where a cue first wishes for an output. */
    private record Wish(Cue cue, String key) {}

    private static void output(final Draft draft, final Wish wish, final Output output, final Findings findings) {
        final Cue cue = wish.cue();
        if (output.family() == Family.AIR_SUPPLY || output.family() == Family.HEATER) {
            findings.error(
                    "cue-energises-automatic",
                    draft.at(Say.table(cue), wish.key()),
                    Say.words(
                            Say.quoted(cue.name()) + " energises " + Say.quoted(output.name()) + ", which is automatic",
                            "air comes on with arming and heat with the warming-up time; a greeting has no say in them"
                                    + " (S15)",
                            "leave the step out"));
        }
        if (!output.zone().equals(cue.zone())) {
            findings.error(
                    "cue-in-other-zone",
                    draft.at(Say.table(cue), wish.key()),
                    Say.words(
                            Say.quoted(cue.name()) + " of zone " + Say.quoted(cue.zone()) + " energises "
                                    + Say.quoted(output.name()) + " of zone " + Say.quoted(output.zone()),
                            "a zone is armed and locked out as one: this would move a prop where somebody may be at"
                                    + " work",
                            "make a second cue in zone " + Say.quoted(output.zone()) + " with the same start"));
        }
    }

    private static void across(final Draft draft, final Cue cue, final List<String> homes, final Findings findings) {
        findings.error(
                "cue-across",
                draft.at(Say.table(cue), "steps"),
                Say.words(
                        Say.quoted(cue.name()) + " energises outputs of " + homes.size() + " controllers: "
                                + Say.quoted(homes),
                        "a cue runs on one controller, and needs no network there (S24)",
                        "make one cue for each controller"));
    }

    private static void inputs(final Draft draft, final Cue cue, final String home, final Findings findings) {
        final Map<String, String> asked = new LinkedHashMap<>();
        cue.start().inputs().forEach(name -> asked.putIfAbsent(name, "starts"));
        for (int at = 0; at < cue.provided().size(); at++) {
            asked.putIfAbsent(cue.provided().get(at).input(), "provided[" + at + "]");
        }
        Steps.all(Step.Await.class, cue.steps())
                .forEach(placed -> asked.putIfAbsent(placed.step().condition().input(), placed.key("await")));
        asked.forEach((name, key) -> draft.rig()
                .input(name)
                .filter(input -> !input.controllers().contains(home))
                .ifPresent(input -> findings.error(
                        "cue-listens-elsewhere",
                        draft.at(Say.table(cue), key),
                        Say.words(
                                Say.quoted(cue.name()) + " waits for " + Say.quoted(name)
                                        + ", which is not wired to controller " + Say.quoted(home),
                                "the cue runs where its outputs are driven, and would never see it",
                                "use an input of " + Say.quoted(home)))));
    }
}
