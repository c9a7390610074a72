package slackwater.model.check;

import java.time.Duration;
import java.util.Optional;
import slackwater.model.Cue;
import slackwater.model.Output;
import slackwater.model.Step;
import slackwater.model.check.Steps.Placed;
import slackwater.model.engineering.FlashCount;
import slackwater.model.finding.Findings;
import slackwater.model.finding.Position;
import slackwater.model.kind.Family;

/** A lamp that blinks flashes: not too fast, and counted with what is seen together with it (S14). */
final class BlinkFlashes implements Rule {
    private static final long NS_PER_S = 1_000_000_000L;
    private static final Duration SLOWEST_FLASH = Duration.ofSeconds(1);

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Cue cue : draft.show().cues()) {
            for (final Placed<Step.Energise> placed : Steps.all(Step.Energise.class, cue.steps())) {
                placed.step()
                        .blink()
                        .ifPresent(blink -> placed.step().outputs().stream()
                                .flatMap(name -> draft.rig().output(name).stream())
                                .filter(output -> output.family() == Family.LAMP || output.family() == Family.STROBE)
                                .forEach(output -> look(new Blinking(draft, cue, placed, output), blink, findings)));
            }
        }
    }

    /** A step of a cue that blinks an output. */
    private record Blinking(Draft draft, Cue cue, Placed<Step.Energise> placed, Output output) {

        private Optional<Position> at() {
            return draft.at(Say.table(cue), placed.key("blink"));
        }
    }

    private static void look(final Blinking blinking, final Duration blink, final Findings findings) {
        final String lamp = blinking.output().name();
        final String message =
                Say.quoted(blinking.cue().name()) + " blinks " + Say.quoted(lamp) + " every " + Say.time(blink);
        if (isFasterThan(FlashCount.VENUE_MOST_IN_A_SECOND, blink)) {
            findings.error(
                    "blinks-too-fast",
                    blinking.at(),
                    Say.words(message, Flashing.OVER_VENUE, "make blink at least 340 ms"));
        } else if (isFasterThan(FlashCount.MOST_IN_A_SECOND, blink)) {
            findings.warning(
                    "blinks-fast", blinking.at(), Say.words(message, Flashing.OVER_WCAG, "make blink at least 340 ms"));
        }
        if (blink.compareTo(SLOWEST_FLASH) <= 0
                && FlashLimits.of(blinking.draft().rig(), lamp).isEmpty()) {
            findings.warning(
                    "blink-uncounted",
                    blinking.at(),
                    Say.words(
                            message + ", and no flash limit counts it",
                            "lamps and strobes that are seen together add up (S14)",
                            "name " + Say.quoted(lamp) + " in a flash limit, or make blink longer than 1 s"));
        }
    }

    /** Exact: 3 a second is a third of a second, which has no decimals. */
    private static boolean isFasterThan(final int aSecond, final Duration blink) {
        return blink.toNanos() * aSecond < NS_PER_S;
    }
}
