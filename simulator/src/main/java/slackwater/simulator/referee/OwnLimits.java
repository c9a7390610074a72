package slackwater.simulator.referee;

import java.util.Arrays;
import slackwater.model.Input;
import slackwater.model.Limits;
import slackwater.model.Output;
import slackwater.model.event.Spans;
import slackwater.model.kind.Family;

/**
 * What each output may do by itself: longest on, shortest off, starts within a time, run time, one shot (S11, S12,
 * S15).
 */
final class OwnLimits extends Rule {
    private final long[] longestOnNs;
    private final long[] shortestOffNs;
    private final long[] startsWithinNs;
    private final long[] runTimeNs;
    private final boolean[] isRelease;
    private final int[] hungBySense;
    private final Dues dues;
    /** For each output, its last starts, the oldest at {@link #oldest}; empty where starts are not limited. */
    private final long[][] lastStartsNs;

    private final int[] oldest;
    private final long[] previousStartNs;
    private final boolean[] isSpent;

    OwnLimits(final Wiring wiring) {
        final int outputs = wiring.outputs().size();
        longestOnNs = new long[outputs];
        shortestOffNs = new long[outputs];
        startsWithinNs = new long[outputs];
        runTimeNs = new long[outputs];
        isRelease = new boolean[outputs];
        lastStartsNs = new long[outputs][];
        oldest = new int[outputs];
        previousStartNs = new long[outputs];
        Arrays.fill(previousStartNs, Levels.NONE);
        isSpent = new boolean[outputs];
        dues = new Dues(outputs);
        for (int index = 0; index < outputs; index++) {
            read(index, wiring.output(index));
        }
        hungBySense = new int[wiring.senses().size()];
        for (final Wiring.Sense sense : wiring.senses()) {
            hungBySense[sense.index()] = hungOf(sense.input(), wiring);
        }
    }

    private OwnLimits(final OwnLimits other) {
        longestOnNs = other.longestOnNs;
        shortestOffNs = other.shortestOffNs;
        startsWithinNs = other.startsWithinNs;
        runTimeNs = other.runTimeNs;
        isRelease = other.isRelease;
        hungBySense = other.hungBySense;
        dues = other.dues.copy();
        lastStartsNs = new long[other.lastStartsNs.length][];
        for (int index = 0; index < lastStartsNs.length; index++) {
            lastStartsNs[index] = other.lastStartsNs[index].clone();
        }
        oldest = other.oldest.clone();
        previousStartNs = other.previousStartNs.clone();
        isSpent = other.isSpent.clone();
    }

    private void read(final int index, final Output output) {
        final Limits limits = output.limits();
        // An air supply is meant to stay open for the whole evening (S15).
        longestOnNs[index] = output.family() == Family.AIR_SUPPLY
                ? Dues.NEVER
                : limits.longestOn().map(Wiring::ns).orElse(Dues.NEVER);
        shortestOffNs[index] = Wiring.ns(limits.shortestOff());
        lastStartsNs[index] = new long[limits.starts().map(Limits.Starts::most).orElse(0)];
        Arrays.fill(lastStartsNs[index], Levels.NONE);
        startsWithinNs[index] =
                limits.starts().map(starts -> Wiring.ns(starts.within())).orElse(0L);
        runTimeNs[index] = output.facts().duration("run-time").map(Wiring::ns).orElse(0L);
        isRelease[index] = output.family() == Family.RELEASE;
    }

    private static int hungOf(final Input input, final Wiring wiring) {
        return input.use() == Input.Use.HUNG
                ? input.facts().text("of").map(wiring::outputIndex).orElse(-1)
                : -1;
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        for (int output = 0; dues.isAnyPending() && output < longestOnNs.length; output++) {
            if (dues.isOver(output, untilNs)) {
                log.add(
                        RuleWords.LONGEST_ON,
                        levels.wiring().outputName(output),
                        dues.lateNs(output),
                        "energised for more than " + Spans.text(longestOnNs[output]) + " and one scan");
                dues.clear(output);
            }
        }
    }

    @Override
    void sensed(final int sense, final Levels levels) {
        if (hungBySense[sense] >= 0 && levels.isActive(sense)) {
            isSpent[hungBySense[sense]] = false;
        }
    }

    @Override
    void acted(final Act act, final Levels levels) {
        if (act instanceof Act.Hung hung) {
            isSpent[levels.wiring().outputIndex(hung.output())] = false;
        }
    }

    @Override
    void rested(final int output, final Levels levels) {
        dues.clear(output);
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        final long nowNs = levels.nowNs();
        final String name = levels.wiring().outputName(output);
        if (longestOnNs[output] != Dues.NEVER) {
            dues.set(output, nowNs + longestOnNs[output] + levels.wiring().periodNs());
        }
        final long restedNs = levels.restedNs(output);
        if (restedNs != Levels.NONE && nowNs - restedNs < shortestOffNs[output]) {
            log.add(
                    RuleWords.SHORTEST_OFF,
                    name,
                    nowNs,
                    "only " + Spans.text(nowNs - restedNs) + " at rest, not " + Spans.text(shortestOffNs[output]));
        }
        countStart(output, nowNs, name, log);
        final long previousNs = previousStartNs[output];
        if (previousNs != Levels.NONE && nowNs - previousNs < runTimeNs[output]) {
            log.add(RuleWords.STILL_RUNNING, name, nowNs, "started " + Spans.text(nowNs - previousNs) + " ago");
        }
        previousStartNs[output] = nowNs;
        if (isSpent[output]) {
            log.add(RuleWords.SPENT, name, nowNs, "energised again without having been hung");
        }
        isSpent[output] = isRelease[output];
    }

    private void countStart(final int output, final long nowNs, final String name, final Log log) {
        final long[] ring = lastStartsNs[output];
        if (ring.length == 0) {
            return;
        }
        final long oldestNs = ring[oldest[output]];
        // A span is half open: two starts exactly its length apart do not share it.
        if (oldestNs != Levels.NONE && nowNs - oldestNs < startsWithinNs[output]) {
            log.add(
                    RuleWords.STARTS,
                    name,
                    nowNs,
                    "start " + (ring.length + 1) + " within " + Spans.text(startsWithinNs[output]));
        }
        ring[oldest[output]] = nowNs;
        oldest[output] = (oldest[output] + 1) % ring.length;
    }

    @Override
    long wakeNs(final Levels levels) {
        return dues.wakeNs();
    }

    @Override
    OwnLimits copy() {
        return new OwnLimits(this);
    }
}
