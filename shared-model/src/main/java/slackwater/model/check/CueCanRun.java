package slackwater.model.check;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slackwater.model.Condition;
import slackwater.model.Cue;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.Start;
import slackwater.model.Step;
import slackwater.model.check.Steps.Placed;
import slackwater.model.finding.Findings;

/**
 * Finds cues and steps that can never do anything, and only those of which that is certain: a contradiction between
 * conditions that must hold in the same scan.
 */
final class CueCanRun implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        draft.rig().outputs().forEach(output -> permits(draft, output, findings));
        for (final Cue cue : draft.show().cues()) {
            start(draft, cue, findings);
            final List<Condition> certain = new ArrayList<>(certainAtStart(cue.start()));
            provided(draft, cue, certain, findings);
            certain.addAll(cue.provided());
            steps(new Walk(draft, cue, findings), Steps.of(cue.steps()), certain);
        }
    }

    /** What stays the same while a cue's steps are walked. */
    private record Walk(Draft draft, Cue cue, Findings findings) {}

    private static void start(final Draft draft, final Cue cue, final Findings findings) {
        if (cue.start() instanceof Start.InOrder order && order.first().equals(order.second())) {
            findings.error(
                    "order-of-one",
                    draft.at(Say.table(cue), "starts"),
                    Say.words(
                            Say.quoted(cue.name()) + " waits for " + Say.quoted(order.first()) + " after itself",
                            "a direction takes two inputs, one after the other",
                            "name two different inputs in order, or write starts = " + Say.quoted(order.first())));
        } else if (cue.start() instanceof Start.AllWithin all
                && all.inputs().stream().distinct().count() == 1) {
            findings.warning(
                    "all-of-one",
                    draft.at(Say.table(cue), "starts"),
                    Say.words(
                            Say.quoted(cue.name()) + " waits for all of a single input",
                            "within says nothing where there is only one",
                            "name a second input in all, or write starts = "
                                    + Say.quoted(all.inputs().get(0))));
        }
    }

    /**
     * An edge is the moment at which an input is proven active; only the last one of several is surely so at the start.
     */
    private static List<Condition> certainAtStart(final Start start) {
        if (start instanceof Start.OnInput on) {
            return List.of(new Condition(on.input(), true));
        }
        return start instanceof Start.InOrder order ? List.of(new Condition(order.second(), true)) : List.of();
    }

    private static void provided(
            final Draft draft, final Cue cue, final List<Condition> certain, final Findings findings) {
        final List<Condition> before = new ArrayList<>(certain);
        for (int at = 0; at < cue.provided().size(); at++) {
            final Condition condition = cue.provided().get(at);
            if (before.contains(opposite(condition))) {
                findings.error(
                        "cue-never-starts",
                        draft.at(Say.table(cue), "provided[" + at + "]"),
                        Say.words(
                                Say.quoted(cue.name()) + " never starts: it is provided "
                                        + Say.quoted(condition.toString()) + ", and "
                                        + Say.quoted(opposite(condition).toString()) + " must hold at its start",
                                "no input is proven active and inactive at once",
                                "change starts or provided"));
            }
            before.add(condition);
        }
    }

    private static void permits(final Draft draft, final Output output, final Findings findings) {
        final List<Condition> needs = needs(draft, output.name());
        final Set<String> torn = new LinkedHashSet<>();
        needs.stream()
                .filter(condition -> condition.isActive() && needs.contains(opposite(condition)))
                .forEach(condition -> torn.add(condition.input()));
        for (final String input : torn) {
            findings.error(
                    "never-permitted",
                    draft.where().table(Say.table(output)),
                    Say.words(
                            Say.quoted(output.name()) + " is never permitted: its permissives need " + Say.quoted(input)
                                    + " and " + Say.quoted("not " + input),
                            "no input is proven active and inactive at once",
                            "take one of the two needs away"));
        }
    }

    /**
     * Walks the steps with the conditions that certainly hold at the present mark: the start, or the end of an await
     * that ends the cue where it fails. They are certain in that very scan only, so only steps at the mark itself are
     * judged.
     */
    private static void steps(final Walk walk, final List<Placed<Step>> steps, final List<Condition> atMark) {
        List<Condition> certain = atMark;
        boolean isAtMark = true;
        for (final Placed<Step> placed : steps) {
            final Step step = placed.step();
            if (step instanceof Step.Energise energise) {
                if (energise.at().map(Duration::isZero).orElse(isAtMark)) {
                    for (final String output : energise.outputs()) {
                        wish(walk, placed.key("energise"), output, certain);
                    }
                }
                isAtMark = false;
            } else if (step instanceof Step.Pause) {
                isAtMark = false;
            } else if (step instanceof Step.Await await) {
                certain = await.goesOn() ? List.of() : List.of(await.condition());
                isAtMark = true;
            } else if (step instanceof Step.OneOf oneOf) {
                final List<Condition> now = isAtMark ? certain : List.of();
                Steps.choices(placed.path(), oneOf).forEach(choice -> steps(walk, choice, now));
                certain = List.of();
                isAtMark = true;
            }
        }
    }

    private static void wish(final Walk walk, final String key, final String name, final List<Condition> certain) {
        final Optional<Output> output = walk.draft().rig().output(name);
        if (output.isEmpty() || !output.get().family().consumesDemand()) {
            return;
        }
        final Optional<Condition> against = needs(walk.draft(), name).stream()
                .filter(need -> certain.contains(opposite(need)))
                .findFirst();
        against.ifPresent(need -> walk.findings()
                .error(
                        "step-never-permitted",
                        walk.draft().at(Say.table(walk.cue()), key),
                        Say.words(
                                Say.quoted(walk.cue().name()) + " wishes for " + Say.quoted(name) + " just when "
                                        + Say.quoted(opposite(need).toString()) + " holds, and its permissive needs "
                                        + Say.quoted(need.toString()),
                                "the refusal uses the wish up, so this step never does anything (S11)",
                                "start the cue on another input, or await " + Say.quoted(need.toString())
                                        + " before the step")));
    }

    private static List<Condition> needs(final Draft draft, final String output) {
        return draft.rig().interlocks().stream()
                .filter(interlock -> interlock.outputs().contains(output))
                .filter(Interlock.Permissive.class::isInstance)
                .flatMap(interlock -> ((Interlock.Permissive) interlock).needs().stream())
                .toList();
    }

    private static Condition opposite(final Condition condition) {
        return new Condition(condition.input(), !condition.isActive());
    }
}
