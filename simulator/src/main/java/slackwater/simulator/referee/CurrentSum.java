package slackwater.simulator.referee;

import java.util.Locale;
import slackwater.model.Load;

/** A load limit or one controller's share of it: currents as they are, inrush for its time (S12, S13). */
final class CurrentSum extends Rule {
    /** Sums of decimal fractions miss the limit by rounding; this is far below any current that matters. */
    private static final double ROUNDING_A = 1e-9;

    private final String name;
    private final boolean[] isGuarded;
    private final double limitA;
    private final double[] steadyA;
    private final double[] inrushA;
    private final long[] inrushNs;

    CurrentSum(final String name, final boolean[] isGuarded, final double limitA, final Wiring wiring) {
        this.name = name;
        this.isGuarded = isGuarded;
        this.limitA = limitA;
        final int outputs = isGuarded.length;
        steadyA = new double[outputs];
        inrushA = new double[outputs];
        inrushNs = new long[outputs];
        for (int output = 0; output < outputs; output++) {
            final Load load = wiring.output(output).load();
            steadyA[output] = load.amps();
            inrushA[output] = Math.max(load.amps(), load.inrushAmps());
            inrushNs[output] = Wiring.ns(load.inrushLasts());
        }
    }

    /** The sum only grows at a start, so only starts are judged. */
    @Override
    void started(final int output, final Levels levels, final Log log) {
        if (!isGuarded[output]) {
            return;
        }
        double sumA = 0;
        for (int other = 0; other < isGuarded.length; other++) {
            if (isGuarded[other] && levels.isEnergised(other)) {
                final boolean isStarting = levels.nowNs() - levels.startedNs(other) < inrushNs[other];
                sumA += isStarting ? inrushA[other] : steadyA[other];
            }
        }
        if (sumA > limitA + ROUNDING_A) {
            log.add(
                    RuleWords.LOAD_LIMIT,
                    levels.wiring().outputName(output),
                    levels.nowNs(),
                    String.format(Locale.ROOT, "\"%s\": %.3f A, limit %.3f A", name, sumA, limitA));
        }
    }

    /** Remembers nothing, so it is its own copy. */
    @Override
    CurrentSum copy() {
        return this;
    }
}
