package slackwater.model.check;

import java.util.List;
import java.util.Optional;
import slackwater.model.Begun;
import slackwater.model.Condition;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.Return;
import slackwater.model.finding.Findings;
import slackwater.model.finding.Findings.Words;

/**
 * Where the return moves into the reach, an interlock lets a stroke that has begun finish: going to rest would be the
 * very movement that it should prevent (S1).
 */
final class RestIntoReach implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Interlock interlock : draft.rig().interlocks()) {
            if (interlock instanceof Interlock.Permissive permissive && permissive.begun() == Begun.REST) {
                look(draft, permissive, permissive.needs(), findings);
            } else if (interlock instanceof Interlock.Trip trip && trip.begun() == Begun.REST) {
                look(draft, trip, trip.when(), findings);
            }
        }
    }

    private static void look(
            final Draft draft, final Interlock interlock, final List<Condition> conditions, final Findings findings) {
        interlock.outputs().stream()
                .flatMap(name -> draft.rig().output(name).stream())
                .filter(RestIntoReach::returnsIntoReach)
                .forEach(output -> {
                    final Optional<String> watcher = watcher(draft, conditions, output);
                    final Words words = words(interlock, output, watcher);
                    if (watcher.isPresent()) {
                        findings.error("rest-into-reach", draft.at(Say.table(interlock), "begun"), words);
                    } else if (interlock instanceof Interlock.Permissive) {
                        findings.warning("rest-into-reach", draft.at(Say.table(interlock), "begun"), words);
                    }
                });
    }

    private static Optional<String> watcher(final Draft draft, final List<Condition> conditions, final Output output) {
        return conditions.stream()
                .flatMap(condition -> draft.rig().input(condition.input()).stream())
                .filter(input -> input.reachOf().contains(output.name()))
                .map(input -> input.name())
                .findFirst();
    }

    private static boolean returnsIntoReach(final Output output) {
        final Optional<Return> returns = output.rest().onPowerLoss();
        return output.reachM() > 0
                && (returns.equals(Optional.of(Return.FALLS))
                        || (returns.equals(Optional.of(Return.SPRING_RETURNS))
                                && output.facts().siOr("moving-mass", 0) > 0));
    }

    private static Words words(final Interlock interlock, final Output output, final Optional<String> watcher) {
        final String when = watcher.map(input -> "somebody who breaks " + Say.quoted(input) + " would be met by it")
                .orElse("whoever stands in its reach just then would be met by it");
        return Say.words(
                Say.quoted(interlock.name()) + " sends " + Say.quoted(output.name())
                        + " to rest in mid-stroke, and its return moves into its reach",
                when + " (S1)",
                "write begun = \"finish\": no new start, and a stroke that has begun ends by itself");
    }
}
