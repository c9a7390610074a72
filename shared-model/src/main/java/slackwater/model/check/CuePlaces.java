package slackwater.model.check;

import java.util.List;
import java.util.function.BiConsumer;
import slackwater.model.Condition;
import slackwater.model.Cue;
import slackwater.model.Output;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** A cue wishes for outputs of its own zone and one controller, listens there, and leaves automatic outputs alone. */
final class CuePlaces implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Cue cue : draft.show().cues()) {
            final List<Output> wished = Steps.outputs(cue.steps()).stream()
                    .flatMap(name -> draft.rig().output(name).stream())
                    .toList();
            wished.forEach(output -> output(draft, cue, output, findings));
            final List<String> homes =
                    Homes.of(draft.rig(), wished.stream().map(Output::name).toList());
            if (homes.size() > 1) {
                across(draft, cue, homes, findings);
            } else if (homes.size() == 1) {
                inputs(draft, cue, homes.get(0), findings);
            }
        }
    }

    private static void output(final Draft draft, final Cue cue, final Output output, final Findings findings) {
        if (output.family() == Family.AIR_SUPPLY || output.family() == Family.HEATER) {
            findings.error(
                    "cue-energises-automatic",
                    draft.at(Say.table(cue), "steps"),
                    Say.words(
                            Say.quoted(cue.name()) + " energises " + Say.quoted(output.name()) + ", which is automatic",
                            "air comes on with arming and heat with the warming-up time; a greeting has no say in them"
                                    + " (S15)",
                            "leave the step out"));
        }
        if (!output.zone().equals(cue.zone())) {
            findings.error(
                    "cue-in-other-zone",
                    draft.at(Say.table(cue), "steps"),
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
        elsewhere(draft, cue, home, findings).accept("starts", cue.start().inputs());
        elsewhere(draft, cue, home, findings).accept("provided", names(cue.provided()));
        elsewhere(draft, cue, home, findings).accept("steps", names(Steps.awaited(cue.steps())));
    }

    /** Reports those of the inputs named under a key that the cue's controller does not sense. */
    private static BiConsumer<String, List<String>> elsewhere(
            final Draft draft, final Cue cue, final String home, final Findings findings) {
        return (key, inputs) -> inputs.stream()
                .distinct()
                .flatMap(name -> draft.rig().input(name).stream())
                .filter(input -> !input.controllers().contains(home))
                .forEach(input -> findings.error(
                        "cue-listens-elsewhere",
                        draft.at(Say.table(cue), key),
                        Say.words(
                                Say.quoted(cue.name()) + " waits for " + Say.quoted(input.name())
                                        + ", which is not wired to controller " + Say.quoted(home),
                                "the cue runs where its outputs are driven, and would never see it",
                                "use an input of " + Say.quoted(home))));
    }

    private static List<String> names(final List<Condition> conditions) {
        return conditions.stream().map(Condition::input).toList();
    }
}
