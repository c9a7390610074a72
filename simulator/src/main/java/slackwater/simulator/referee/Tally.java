package slackwater.simulator.referee;

/** Times and counts of each output for the summary. */
final class Tally extends Rule {
    private final long[] longestOnNs;
    private final int[] starts;
    private final long[] atRestNs;

    Tally(final Wiring wiring) {
        final int outputs = wiring.outputs().size();
        longestOnNs = new long[outputs];
        starts = new int[outputs];
        atRestNs = new long[outputs];
    }

    private Tally(final Tally other) {
        longestOnNs = other.longestOnNs.clone();
        starts = other.starts.clone();
        atRestNs = other.atRestNs.clone();
    }

    @Override
    void rested(final int output, final Levels levels) {
        longestOnNs[output] = Math.max(longestOnNs[output], levels.nowNs() - levels.startedNs(output));
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        starts[output]++;
        atRestNs[output] += levels.nowNs() - restSinceNs(output, levels);
    }

    private static long restSinceNs(final int output, final Levels levels) {
        return levels.restedNs(output) == Levels.NONE ? levels.firstNs() : levels.restedNs(output);
    }

    Figures.OfOutput of(final int output, final Levels levels, final Harm harm) {
        final boolean isOn = levels.isEnergised(output);
        final long onNs = isOn ? levels.nowNs() - levels.startedNs(output) : 0;
        final long restNs = isOn || !levels.hasBegun() ? 0 : levels.nowNs() - restSinceNs(output, levels);
        return new Figures.OfOutput(
                levels.wiring().outputName(output),
                Math.max(longestOnNs[output], onNs),
                starts[output],
                atRestNs[output] + restNs,
                harm.nearMisses(output),
                harm.worstEnergyJ(output));
    }

    @Override
    Tally copy() {
        return new Tally(this);
    }
}
