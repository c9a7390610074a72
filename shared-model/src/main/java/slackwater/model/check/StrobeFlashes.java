package slackwater.model.check;

import java.util.OptionalDouble;
import slackwater.model.Interlock.FlashLimit;
import slackwater.model.Output;
import slackwater.model.engineering.FlashCount;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** A strobe says how it flashes, keeps to what is safe to look at, and is counted (S14). */
final class StrobeFlashes implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            if (output.family() == Family.STROBE) {
                declared(draft, output, findings);
                if (FlashLimits.of(draft.rig(), output.name()).isEmpty()) {
                    uncounted(draft, output, findings);
                }
            }
        }
        FlashLimits.all(draft.rig()).forEach(limit -> limit(draft, limit, findings));
    }

    private static void declared(final Draft draft, final Output output, final Findings findings) {
        final OptionalDouble rateHz = output.facts().si("flash-rate");
        if (rateHz.isPresent()) {
            rate(draft, output, rateHz.getAsDouble(), findings);
        } else if (!output.facts().flag("one-flash-per-pulse")) {
            findings.error(
                    "flashes-undeclared",
                    draft.where().table(Say.table(output)),
                    Say.words(
                            Say.quoted(output.name()) + " does not say how it flashes",
                            "a bought strobe flashes by itself while it is powered, so its pulses are not its flashes"
                                    + " (S14)",
                            "add one-flash-per-pulse = true, or flash-rate with its own rate, such as \"2 Hz\""));
        }
    }

    private static void rate(final Draft draft, final Output output, final double rateHz, final Findings findings) {
        final String message = Say.quoted(output.name()) + " flashes " + Say.number(rateHz, 2) + " times a second";
        if (rateHz > FlashCount.VENUE_MOST_IN_A_SECOND) {
            findings.error(
                    "flashes-too-fast",
                    draft.at(Say.table(output), "flash-rate"),
                    Say.words(message, Flashing.OVER_VENUE, "set it to at most 3 a second"));
        } else if (rateHz > FlashCount.MOST_IN_A_SECOND) {
            findings.warning(
                    "flashes-fast",
                    draft.at(Say.table(output), "flash-rate"),
                    Say.words(message, Flashing.OVER_WCAG, "set it to at most 3 a second"));
        }
        for (final FlashLimit limit : FlashLimits.of(draft.rig(), output.name())) {
            final int most = FlashLimits.most(limit, output.controller());
            if (rateHz > most) {
                findings.error(
                        "flashes-over-limit",
                        draft.at(Say.table(output), "flash-rate"),
                        Say.words(
                                message + ", and " + Say.quoted(limit.name()) + " lets it flash " + most,
                                "while it is powered nothing can hold its flashes back (S14)",
                                "set the strobe to at most " + most + " a second"));
            }
        }
    }

    private static void uncounted(final Draft draft, final Output output, final Findings findings) {
        findings.error(
                "strobe-uncounted",
                draft.where().table(Say.table(output)),
                Say.words(
                        "no flash limit counts " + Say.quoted(output.name()),
                        "strobes that are seen together add up, and more than 3 flashes in a second can bring on a"
                                + " seizure (WCAG 2.3.1)",
                        "add a [flash-limit.NAME] with outputs = [" + Say.quoted(output.name()) + "] and flashes = 3"));
    }

    private static void limit(final Draft draft, final FlashLimit limit, final Findings findings) {
        final String message = Say.quoted(limit.name()) + " allows " + limit.flashes() + " flashes in a second";
        if (limit.flashes() > FlashCount.VENUE_MOST_IN_A_SECOND) {
            findings.error(
                    "flashes-too-fast",
                    draft.at(Say.table(limit), "flashes"),
                    Say.words(message, Flashing.OVER_VENUE, "write flashes = 3"));
        } else if (limit.flashes() > FlashCount.MOST_IN_A_SECOND) {
            findings.warning(
                    "flashes-fast",
                    draft.at(Say.table(limit), "flashes"),
                    Say.words(message, Flashing.OVER_WCAG, "write flashes = 3"));
        }
    }
}
