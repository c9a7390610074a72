package slackwater.model.check;

import java.time.Duration;
import slackwater.model.Cue;
import slackwater.model.Output;
import slackwater.model.Step;
import slackwater.model.engineering.FlashCount;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** A lamp that blinks flashes: not too fast, and counted with what is seen together with it (S14). */
final class BlinkFlashes implements Rule {
    private static final long NS_PER_S = 1_000_000_000L;
    private static final Duration SLOWEST_FLASH = Duration.ofSeconds(1);

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Cue cue : draft.show().cues()) {
            for (final Step.Energise step : Steps.energising(cue.steps())) {
                step.blink()
                        .ifPresent(blink -> step.outputs().stream()
                                .flatMap(name -> draft.rig().output(name).stream())
                                .filter(output -> output.family() == Family.LAMP || output.family() == Family.STROBE)
                                .forEach(output -> look(draft, cue, output, blink, findings)));
            }
        }
    }

    private static void look(
            final Draft draft, final Cue cue, final Output output, final Duration blink, final Findings findings) {
        final String message =
                Say.quoted(cue.name()) + " blinks " + Say.quoted(output.name()) + " every " + Say.time(blink);
        if (isFasterThan(FlashCount.VENUE_MOST_IN_A_SECOND, blink)) {
            findings.error(
                    "blinks-too-fast",
                    draft.at(Say.table(cue), "steps"),
                    Say.words(message, Flashing.OVER_VENUE, "make blink at least 340 ms"));
        } else if (isFasterThan(FlashCount.MOST_IN_A_SECOND, blink)) {
            findings.warning(
                    "blinks-fast",
                    draft.at(Say.table(cue), "steps"),
                    Say.words(message, Flashing.OVER_WCAG, "make blink at least 340 ms"));
        }
        if (blink.compareTo(SLOWEST_FLASH) <= 0
                && FlashLimits.of(draft.rig(), output.name()).isEmpty()) {
            findings.warning(
                    "blink-uncounted",
                    draft.at(Say.table(cue), "steps"),
                    Say.words(
                            message + ", and no flash limit counts it",
                            "lamps and strobes that are seen together add up (S14)",
                            "name " + Say.quoted(output.name()) + " in a flash limit, or make blink longer than 1 s"));
        }
    }

    /** Exact: 3 a second is a third of a second, which has no decimals. */
    private static boolean isFasterThan(final int aSecond, final Duration blink) {
        return blink.toNanos() * aSecond < NS_PER_S;
    }
}
