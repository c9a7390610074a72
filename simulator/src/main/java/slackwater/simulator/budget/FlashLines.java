package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.model.Cue;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.Step;
import slackwater.model.engineering.FlashCount;
import slackwater.model.kind.Family;

/** Flashes of all strobes and blinking lamps that people see together, in the worst second. */
final class FlashLines {
    private static final double NS_PER_S = 1e9;

    private FlashLines() {}

    static void add(final Reckoning to) {
        for (final Output strobe : to.outputs(Family.STROBE)) {
            strobe.facts()
                    .si("flash-rate")
                    .ifPresent(rate -> to.add(new Entry(Line.Group.FLASHES, strobe.name() + " by itself, in a second")
                            .asks(rate, Measure.FLASH)
                            .has(FlashCount.MOST_IN_A_SECOND, Measure.FLASH)
                            .by("WCAG 2.3.1 (handbook 4.1)")
                            .advice("a strobe of one flash a pulse, driven by the show")
                            .judged()));
        }
        for (final Interlock interlock : to.rig().interlocks()) {
            if (interlock instanceof Interlock.FlashLimit limit) {
                group(to, limit);
            }
        }
    }

    /** All members at once, each in the cue that flashes most, against the limit that the controllers keep. */
    private static void group(final Reckoning to, final Interlock.FlashLimit limit) {
        int sum = 0;
        for (final String name : limit.outputs()) {
            int most = 0;
            for (final Cue cue : to.show().cues()) {
                most = Math.max(most, FlashCount.most(onsets(cue.steps(), name)));
            }
            sum += most;
        }
        to.add(new Entry(Line.Group.FLASHES, limit.name() + ", all its cues at once, in a second")
                .asks(sum, Measure.FLASH)
                .has(Math.min(limit.flashes(), FlashCount.MOST_IN_A_SECOND), Measure.FLASH)
                .by("onsets in [t, t + 1 s) (handbook 4.3, WCAG 2.3.1)")
                .advice("the limit refuses the flashes above it; space them in the show so that none is lost")
                .cautioned());
    }

    /** Onsets of an output, as its steps would have them without any variation. */
    private static List<Long> onsets(final List<Step> steps, final String output) {
        final List<Long> onsetsNs = new ArrayList<>();
        long beforeNs = 0;
        for (final Step step : steps) {
            if (step instanceof Step.Energise energise) {
                final long fromNs = energise.at().map(at -> at.toNanos()).orElse(beforeNs);
                final Optional<Long> periodNs = energise.blink().map(period -> period.toNanos());
                if (energise.outputs().contains(output)) {
                    final long untilNs = fromNs + energise.lasts().toNanos();
                    final long everyNs = periodNs.orElse(Long.MAX_VALUE / 4);
                    for (long atNs = fromNs; atNs < untilNs; atNs += everyNs) {
                        onsetsNs.add(atNs);
                    }
                }
                beforeNs = fromNs + energise.lasts().toNanos();
            } else if (step instanceof Step.Pause pause) {
                beforeNs += pause.lasts().toNanos();
            } else if (step instanceof Step.OneOf oneOf) {
                List<Long> most = List.of();
                for (final List<Step> choice : oneOf.choices()) {
                    final List<Long> one = onsets(choice, output);
                    most = FlashCount.most(one) > FlashCount.most(most) ? one : most;
                }
                for (final long onsetNs : most) {
                    onsetsNs.add(beforeNs + onsetNs);
                }
                beforeNs += (long) NS_PER_S;
            }
        }
        return onsetsNs;
    }
}
