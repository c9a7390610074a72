package slackwater.simulator.referee;

import java.util.Arrays;
import slackwater.model.Output;

/**
 * A flash limit or one controller's share of it: at most so many onsets in any [t, t+1 s) (S14, handbook 4.3). A strobe
 * with a rate of its own flashes at once and then every 1/rate while it is energised.
 */
final class FlashCount extends Rule {
    /** What a kind says of a strobe that flashes by itself, hertz. */
    static final String OWN_RATE = "flash-rate";

    private static final double NS_PER_S = 1e9;
    private static final long WINDOW_NS = 1_000_000_000L;
    /** Flashes of two lamps within one frame are seen as one (handbook 4.3: 20 ms). */
    private static final long MERGED_NS = 20_000_000L;

    private final String name;
    private final boolean[] isGuarded;
    private final int limit;
    private final double[] rateHz;
    private final long[] nextNs;
    private final long[] flashes;
    private final long[] lastOnsetsNs;
    private int oldest;
    private long countedNs = Levels.NONE;
    private int countedOutput = -1;
    private boolean isBroken;

    FlashCount(final String name, final boolean[] isGuarded, final int limit, final Wiring wiring) {
        this.name = name;
        this.isGuarded = isGuarded;
        this.limit = limit;
        rateHz = new double[isGuarded.length];
        for (int index = 0; index < rateHz.length; index++) {
            final Output output = wiring.output(index);
            rateHz[index] = output.facts().siOr(OWN_RATE, 0);
        }
        nextNs = new long[isGuarded.length];
        Arrays.fill(nextNs, Dues.NEVER);
        flashes = new long[isGuarded.length];
        lastOnsetsNs = new long[limit];
        Arrays.fill(lastOnsetsNs, Levels.NONE);
    }

    private FlashCount(final FlashCount other) {
        name = other.name;
        isGuarded = other.isGuarded;
        limit = other.limit;
        rateHz = other.rateHz;
        nextNs = other.nextNs.clone();
        flashes = other.flashes.clone();
        lastOnsetsNs = other.lastOnsetsNs.clone();
        oldest = other.oldest;
        countedNs = other.countedNs;
        countedOutput = other.countedOutput;
        isBroken = other.isBroken;
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        int output = first();
        while (output >= 0 && nextNs[output] < untilNs) {
            final long atNs = nextNs[output];
            plan(output, levels.startedNs(output));
            onset(output, atNs, levels, log);
            output = first();
        }
    }

    /** The member that flashes next by itself, or -1. */
    private int first() {
        int found = -1;
        for (int output = 0; output < nextNs.length; output++) {
            if (nextNs[output] != Dues.NEVER && (found < 0 || nextNs[output] < nextNs[found])) {
                found = output;
            }
        }
        return found;
    }

    private void plan(final int output, final long startedNs) {
        flashes[output]++;
        nextNs[output] = startedNs + Math.round(flashes[output] * NS_PER_S / rateHz[output]);
    }

    @Override
    void rested(final int output, final Levels levels) {
        nextNs[output] = Dues.NEVER;
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        if (!isGuarded[output]) {
            return;
        }
        if (rateHz[output] > 0) {
            flashes[output] = 0;
            plan(output, levels.nowNs());
        }
        onset(output, levels.nowNs(), levels, log);
    }

    private void onset(final int output, final long atNs, final Levels levels, final Log log) {
        if (countedOutput >= 0 && countedOutput != output && atNs - countedNs < MERGED_NS) {
            return;
        }
        countedOutput = output;
        countedNs = atNs;
        final boolean isOver =
                limit == 0 || (lastOnsetsNs[oldest] != Levels.NONE && atNs - lastOnsetsNs[oldest] < WINDOW_NS);
        if (isOver && !isBroken) {
            log.add(
                    RuleWords.FLASH_LIMIT,
                    levels.wiring().outputName(output),
                    atNs,
                    "\"" + name + "\": flash " + (limit + 1) + " within a second");
        }
        isBroken = isOver;
        if (limit > 0) {
            lastOnsetsNs[oldest] = atNs;
            oldest = (oldest + 1) % limit;
        }
    }

    @Override
    long wakeNs(final Levels levels) {
        final int output = first();
        return output < 0 ? Dues.NEVER : nextNs[output] + 1;
    }

    @Override
    FlashCount copy() {
        return new FlashCount(this);
    }
}
