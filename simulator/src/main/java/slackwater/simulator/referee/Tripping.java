package slackwater.simulator.referee;

import slackwater.model.Begun;
import slackwater.model.Interlock;

/**
 * A trip on one controller. It counts as latched once its conditions have held so long that the controller has
 * sampled and proven them whatever the phase of its scans. A start is also judged by what a scan at that very moment
 * has surely sampled. It is cleared by a reset with the cause gone.
 */
final class Tripping extends Rule {
    private final String name;
    private final boolean[] isGuarded;
    private final Terms when;
    private final boolean isRestRequired;
    private final int controller;
    /** A controller acts on a release only when it has proven it, so the cause may go away for so long after it. */
    private final long resetHoldsNs;

    private final Dues dues;
    private boolean isLatched;
    private long ripeNs = Dues.NEVER;
    private long resetNs = Levels.NONE;

    Tripping(final Interlock.Trip trip, final int controller, final Wiring wiring) {
        name = trip.name();
        isGuarded = Guarded.on(controller, trip.outputs(), wiring);
        when = new Terms(trip.when(), controller, wiring);
        isRestRequired = trip.begun() == Begun.REST;
        this.controller = controller;
        resetHoldsNs = Buttons.longestReleaseNs(wiring) + wiring.periodNs();
        dues = new Dues(wiring.outputs().size());
    }

    private Tripping(final Tripping other) {
        name = other.name;
        isGuarded = other.isGuarded;
        when = other.when;
        isRestRequired = other.isRestRequired;
        controller = other.controller;
        resetHoldsNs = other.resetHoldsNs;
        dues = other.dues.copy();
        isLatched = other.isLatched;
        ripeNs = other.ripeNs;
        resetNs = other.resetNs;
    }

    @Override
    void begun(final Levels levels) {
        ripeNs = when.surelyProvenNs(levels);
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        if (!isLatched && ripeNs <= untilNs) {
            latch(levels);
        }
        for (int output = 0; dues.isAnyPending() && output < isGuarded.length; output++) {
            if (dues.isOver(output, untilNs)) {
                add(output, dues.lateNs(output), "still energised one scan after it was proven", levels, log);
                dues.clear(output);
            }
        }
    }

    private void latch(final Levels levels) {
        isLatched = true;
        resetNs = Levels.NONE;
        for (int output = 0; isRestRequired && output < isGuarded.length; output++) {
            if (isGuarded[output] && levels.isEnergised(output)) {
                dues.set(output, ripeNs);
            }
        }
    }

    @Override
    void sensed(final int sense, final Levels levels) {
        if (!when.names(sense)) {
            return;
        }
        ripeNs = when.surelyProvenNs(levels);
        if (resetNs != Levels.NONE && levels.nowNs() - resetNs <= resetHoldsNs) {
            clearIfGone(levels);
        }
    }

    @Override
    void reset(final int where, final Levels levels) {
        if (where == controller && isLatched) {
            resetNs = levels.nowNs();
            clearIfGone(levels);
        }
    }

    private void clearIfGone(final Levels levels) {
        if (!when.isEachThere(levels)) {
            isLatched = false;
            resetNs = Levels.NONE;
        }
    }

    @Override
    void rested(final int output, final Levels levels) {
        dues.clear(output);
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        if (!isGuarded[output]) {
            return;
        }
        if (isLatched) {
            add(output, levels.nowNs(), "started without a reset since", levels, log);
        } else if (when.isEachSampledProven(levels)) {
            add(output, levels.nowNs(), "started although it is proven", levels, log);
        }
    }

    private void add(final int output, final long atNs, final String what, final Levels levels, final Log log) {
        log.add(
                RuleWords.TRIP,
                levels.wiring().outputName(output),
                atNs,
                "\"" + name + "\" trips when " + when.text() + ": " + what);
    }

    @Override
    long wakeNs(final Levels levels) {
        return isLatched || ripeNs == Dues.NEVER ? dues.wakeNs() : ripeNs + 1;
    }

    @Override
    Tripping copy() {
        return new Tripping(this);
    }
}
