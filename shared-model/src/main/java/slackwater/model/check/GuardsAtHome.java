package slackwater.model.check;

import java.util.List;
import java.util.Optional;
import slackwater.model.Condition;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.finding.Findings;

/** An interlock must work without a network: its inputs are wired to the output's own controller (S13). */
final class GuardsAtHome implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Interlock interlock : draft.rig().interlocks()) {
            if (interlock instanceof Interlock.Permissive permissive) {
                conditions(draft, permissive, "needs", permissive.needs(), findings);
            } else if (interlock instanceof Interlock.Trip trip) {
                conditions(draft, trip, "when", trip.when(), findings);
            } else if (interlock instanceof Interlock.Shed shed) {
                conditions(draft, shed, "needs", shed.needs(), findings);
            } else if (interlock instanceof Interlock.Exclusion exclusion) {
                exclusion(draft, exclusion, findings);
            }
        }
    }

    private static void conditions(
            final Draft draft,
            final Interlock interlock,
            final String key,
            final List<Condition> conditions,
            final Findings findings) {
        for (int at = 0; at < conditions.size(); at++) {
            final Condition condition = conditions.get(at);
            final Optional<Input> input = draft.rig().input(condition.input());
            final List<Output> elsewhere = interlock.outputs().stream()
                    .flatMap(name -> draft.rig().output(name).stream())
                    .filter(output ->
                            input.isPresent() && !input.get().controllers().contains(output.controller()))
                    .toList();
            if (!elsewhere.isEmpty()) {
                final Output output = elsewhere.get(0);
                findings.error(
                        "input-elsewhere",
                        draft.at(Say.table(interlock), key + "[" + at + "]"),
                        Say.words(
                                Say.quoted(condition.input()) + " is not wired to controller "
                                        + Say.quoted(output.controller()) + ", which drives "
                                        + Say.quoted(elsewhere.stream()
                                                .map(Output::name)
                                                .toList()),
                                "an interlock must hold when the network between controllers is gone (S13)",
                                "wire an input for it to " + Say.quoted(output.controller()) + ", or let the output"
                                        + " be driven by the controller that senses it"));
            }
        }
    }

    private static void exclusion(final Draft draft, final Interlock.Exclusion exclusion, final Findings findings) {
        final List<String> controllers = Homes.of(draft.rig(), exclusion.outputs());
        if (controllers.size() > 1) {
            findings.error(
                    "exclusion-across",
                    draft.at(Say.table(exclusion), "outputs"),
                    Say.words(
                            Say.quoted(exclusion.name()) + " excludes outputs of " + controllers.size()
                                    + " controllers: " + Say.quoted(controllers),
                            "neither knows what the other does in this very scan, so both could start (S13)",
                            "exclude them by wiring, such as a change-over relay, or drive them from one controller"));
        }
    }
}
