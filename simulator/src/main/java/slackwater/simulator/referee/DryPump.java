package slackwater.simulator.referee;

import slackwater.model.kind.Family;
import slackwater.simulator.yard.Truth;

/** A pump that runs on an empty bottle, whatever any ledger of fluid believes (S20). Nothing is allowed at the start. */
final class DryPump extends Rule {
    /**
     * A small pump whose bottle empties while it runs draws air for a moment before it takes harm; what hangs in its hose
     * lasts about as long. Common practice, no source.
     */
    static final long TOLERATED_NS = 5_000_000_000L;

    private final boolean[] isPump;
    private final boolean[] wasPowered;
    private final boolean[] wasDry;
    private final Dues dues;

    DryPump(final Wiring wiring) {
        final int outputs = wiring.outputs().size();
        isPump = new boolean[outputs];
        for (int output = 0; output < outputs; output++) {
            isPump[output] = wiring.output(output).family() == Family.PUMP;
        }
        wasPowered = new boolean[outputs];
        wasDry = new boolean[outputs];
        dues = new Dues(outputs);
    }

    private DryPump(final DryPump other) {
        isPump = other.isPump;
        wasPowered = other.wasPowered.clone();
        wasDry = other.wasDry.clone();
        dues = other.dues.copy();
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        for (int output = 0; dues.isAnyPending() && output < isPump.length; output++) {
            if (dues.isOver(output, untilNs)) {
                add(output, dues.lateNs(output), "ran on", levels, log);
                dues.clear(output);
            }
        }
    }

    @Override
    void plants(final Truth truth, final Levels levels, final Log log) {
        for (int output = 0; output < isPump.length; output++) {
            if (isPump[output]) {
                judge(output, truth.isPowered(output), !truth.hasFluid(output), levels, log);
            }
        }
    }

    private void judge(
            final int output, final boolean isPowered, final boolean isEmpty, final Levels levels, final Log log) {
        final boolean isDry = isPowered && isEmpty;
        if (!isDry) {
            dues.clear(output);
        } else if (!wasPowered[output]) {
            add(output, levels.nowNs(), "started", levels, log);
        } else if (!wasDry[output]) {
            dues.set(output, levels.nowNs() + TOLERATED_NS);
        }
        wasPowered[output] = isPowered;
        wasDry[output] = isDry;
    }

    private static void add(final int output, final long atNs, final String how, final Levels levels, final Log log) {
        log.add(RuleWords.DRY_PUMP, levels.wiring().outputName(output), atNs, how + " on an empty bottle");
    }

    @Override
    long wakeNs(final Levels levels) {
        return dues.wakeNs();
    }

    @Override
    DryPump copy() {
        return new DryPump(this);
    }
}
