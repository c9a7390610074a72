package slackwater.model.check;

import java.util.List;
import java.util.Optional;
import slackwater.model.Consumption;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.finding.Findings;

/** What is counted down can be told to be full again, and what is told to be full is counted down. */
final class Refills implements Rule {
    private static final double NS_PER_S = 1e9;

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Input input : draft.rig().inputs()) {
            if (input.use() == Input.Use.REFILL && refilled(draft.rig(), input).isEmpty()) {
                nothing(draft, input, findings);
            }
        }
        for (final Output output : draft.rig().outputs()) {
            Consumption.of(output).filter(Consumption::runsDry).ifPresent(use -> lookAt(draft, output, use, findings));
        }
    }

    private static void lookAt(final Draft draft, final Output output, final Consumption use, final Findings findings) {
        final boolean canBeRefilled = draft.rig().inputs().stream()
                .filter(input -> input.use() == Input.Use.REFILL)
                .anyMatch(input -> refilled(draft.rig(), input).contains(output));
        if (!canBeRefilled) {
            findings.warning(
                    "never-refilled",
                    draft.where().table(Say.table(output)),
                    Say.words(
                            "no input tells that " + Say.quoted(output.name()) + " has been filled up",
                            "it is counted down, and once it is empty it stays refused for good",
                            "add a button with use = \"refill\" and of = " + Say.quoted(output.name())));
        }
        final double once = use.rate()
                * output.limits().longestOn().map(d -> d.toNanos() / NS_PER_S).orElse(0.0);
        final double holds = use.holds().orElse(0);
        if (once > holds) {
            findings.error(
                    "holds-too-little",
                    draft.at(Say.table(output), "holds"),
                    Say.words(
                            Say.quoted(output.name()) + " holds " + use.of().text(holds) + ", and its longest-on uses "
                                    + use.of().text(once),
                            "it is refused while less is left than one longest-on uses, so it would never start",
                            "make longest-on shorter, or fit a larger bottle or tray"));
        }
    }

    private static void nothing(final Draft draft, final Input input, final Findings findings) {
        final Optional<String> of = input.facts().text("of");
        final String on = " on controller " + Say.quoted(input.controllers());
        final String message = of.map(name -> Say.quoted(name) + " is not counted down" + on)
                .orElseGet(() -> "nothing in zone " + Say.quoted(input.zone().orElse("")) + " is counted down" + on);
        findings.error(
                "refills-nothing",
                draft.at(Say.table(input), "of"),
                Say.words(
                        message,
                        "a refill that no account takes leaves somebody in the belief that it did",
                        "give the pump its holds and flow, or the mister its holds and uses, on the same controller;"
                                + " or leave the button out"));
    }

    /** What a button refills: what it names, or everything of its zone; on its own controller. */
    private static List<Output> refilled(final Rig rig, final Input input) {
        final Optional<String> of = input.facts().text("of");
        return rig.outputs().stream()
                .filter(output -> input.controllers().contains(output.controller()))
                .filter(output -> of.map(output.name()::equals)
                        .orElseGet(() -> input.zone().equals(Optional.of(output.zone()))))
                .filter(output ->
                        Consumption.of(output).filter(Consumption::runsDry).isPresent())
                .toList();
    }
}
