package slackwater.model.check;

import java.time.Duration;
import java.util.List;
import slackwater.model.Cue;
import slackwater.model.Limits;
import slackwater.model.Output;
import slackwater.model.Step;
import slackwater.model.check.Steps.Placed;
import slackwater.model.finding.Findings;
import slackwater.model.finding.Findings.Words;

/**
 * A cue keeps the limits of its outputs. The driver would keep them anyway, but the greeting would not be what was
 * written. Only what some draw of the variations surely does is reported, so times across an await are not compared.
 */
final class CueKeepsLimits implements Rule {

    /** A cue and one of the outputs that it wishes for. */
    private record Wished(Draft draft, Cue cue, Output output, Findings findings) {

        private void error(final String code, final String key, final Words words) {
            findings.error(code, draft.at(Say.table(cue), key), words);
        }
    }

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Cue cue : draft.show().cues()) {
            Steps.all(Step.Energise.class, cue.steps()).stream()
                    .flatMap(placed -> placed.step().outputs().stream())
                    .distinct()
                    .flatMap(name -> draft.rig().output(name).stream())
                    .forEach(output -> look(new Wished(draft, cue, output, findings)));
        }
    }

    private static void look(final Wished wished) {
        final String name = wished.output().name();
        Steps.all(Step.Energise.class, wished.cue().steps()).stream()
                .filter(placed -> placed.step().outputs().contains(name))
                .forEach(placed -> alone(wished, placed));
        for (final List<Placed<Step>> stretch :
                Steps.stretches(Steps.of(wished.cue().steps()))) {
            final List<Timeline.Wish> wishes = Timeline.of(stretch).of(name);
            for (int later = 1; later < wishes.size(); later++) {
                pause(wished, wishes.get(later - 1), wishes.get(later));
            }
            starts(wished, wishes);
        }
    }

    private static void alone(final Wished wished, final Placed<Step.Energise> placed) {
        final Step.Energise step = placed.step();
        final Duration longest = step.blink()
                .map(blink -> blink.dividedBy(2))
                .orElse(step.lasts().plus(step.vary()));
        wished.output()
                .limits()
                .longestOn()
                .filter(longestOn -> longest.compareTo(longestOn) > 0)
                .ifPresent(longestOn -> tooLong(wished, placed, longest, longestOn));
        step.blink().ifPresent(blink -> blinks(wished, placed, blink));
    }

    private static void tooLong(
            final Wished wished, final Placed<Step.Energise> placed, final Duration longest, final Duration longestOn) {
        final Step.Energise step = placed.step();
        final String key =
                step.blink().isPresent() ? "half of blink=" : step.vary().isZero() ? "for=" : "for + vary=";
        wished.error(
                "step-too-long",
                placed.key(step.blink().isPresent() ? "blink" : "for"),
                Say.words(
                        Say.quoted(wished.cue().name()) + " wishes for "
                                + Say.quoted(wished.output().name()) + " too long: " + key + Say.time(longest)
                                + " > longest-on=" + Say.time(longestOn),
                        "the driver rests it after " + Say.time(longestOn) + ", whatever the cue asks",
                        "shorten the step to at most " + Say.time(longestOn)));
    }

    private static void blinks(final Wished wished, final Placed<Step.Energise> placed, final Duration blink) {
        final Step.Energise step = placed.step();
        final Limits limits = wished.output().limits();
        final Duration off = blink.dividedBy(2);
        if (off.compareTo(limits.shortestOff()) < 0) {
            wished.error(
                    "blink-too-fast",
                    placed.key("blink"),
                    Say.words(
                            Say.quoted(wished.cue().name()) + " blinks "
                                    + Say.quoted(wished.output().name())
                                    + " too fast: half of blink=" + Say.time(off) + " < shortest-off="
                                    + Say.time(limits.shortestOff()),
                            "the driver refuses every start that comes sooner",
                            "make blink at least "
                                    + Say.time(limits.shortestOff().multipliedBy(2))));
        }
        limits.starts().ifPresent(starts -> {
            final long onsets =
                    Math.min(onsetsWithin(step.lasts().plus(step.vary()), blink), onsetsWithin(starts.within(), blink));
            if (onsets > starts.most()) {
                tooMany(wished, placed.key("blink"), onsets, starts);
            }
        });
    }

    private static long onsetsWithin(final Duration span, final Duration blink) {
        return (span.toNanos() + blink.toNanos() - 1) / blink.toNanos();
    }

    private static void pause(final Wished wished, final Timeline.Wish earlier, final Timeline.Wish later) {
        final Duration shortestOff = wished.output().limits().shortestOff();
        final Duration off = later.starts().leastSince(earlier.ends());
        if (shortestOff.isZero() || off.compareTo(shortestOff) >= 0) {
            return;
        }
        final String when = off.isNegative() ? "before its first wish has ended" : Say.time(off) + " after it ended";
        wished.error(
                "pause-too-short",
                later.placed().key("energise"),
                Say.words(
                        Say.quoted(wished.cue().name()) + " wishes for "
                                + Say.quoted(wished.output().name()) + " again " + when
                                + ", sooner than its shortest-off of " + Say.time(shortestOff),
                        "the driver refuses the second start",
                        "leave at least " + Say.time(shortestOff) + " between the two steps"));
    }

    private static void starts(final Wished wished, final List<Timeline.Wish> wishes) {
        wished.output().limits().starts().ifPresent(starts -> {
            for (int last = starts.most(); last < wishes.size(); last++) {
                final Timeline.Moment first = wishes.get(last - starts.most()).starts();
                if (wishes.get(last).starts().leastSince(first).compareTo(starts.within()) < 0) {
                    tooMany(wished, wishes.get(last).placed().key("energise"), starts.most() + 1L, starts);
                    return;
                }
            }
        });
    }

    private static void tooMany(final Wished wished, final String key, final long onsets, final Limits.Starts starts) {
        wished.error(
                "too-many-starts",
                key,
                Say.words(
                        Say.quoted(wished.cue().name()) + " starts "
                                + Say.quoted(wished.output().name()) + " "
                                + onsets + " times within " + Say.time(starts.within()) + ", and it allows "
                                + starts.most(),
                        "the driver refuses the starts that are too many",
                        "take steps away, or spread them over more than " + Say.time(starts.within())));
    }
}
