package slackwater.controller.ledger;

import slackwater.controller.run.Amount;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.model.Consumption;

/**
 * How much fluid or water one output has used since it was last filled: its time on, times its rate, times what the last
 * weighing said. Only the time on is remembered, so that a weighing holds for what was used before it too.
 */
final class Meter {
    static final double LEAST_FACTOR = 0.25;
    static final double MOST_FACTOR = 4;
    private static final double NS_PER_S = 1e9;
    private static final long ONE = 1_000_000;

    private final Consumption use;
    private final Counter counter;
    private final Amount sinceFillNs;
    private final Amount factorMillionths;
    private final Since countedFrom;

    /** What is counted down decides when to refuse; what is merely counted decides nothing. */
    Meter(final Consumption use, final String output, final Counter counter, final Layout layout) {
        this.use = use;
        this.counter = counter;
        final String place = "ledger." + output;
        final String since = place + ".since-fill";
        final String factor = place + ".factor";
        sinceFillNs = use.runsDry() ? layout.count(since, Long.MAX_VALUE) : layout.tally(since);
        factorMillionths = use.runsDry() ? layout.count(factor, (long) (MOST_FACTOR * ONE)) : layout.tally(factor);
        countedFrom = layout.since(place + ".counted-from");
    }

    void started(final RunState run) {
        countedFrom.mark(run);
    }

    /** Before its counter learns of it. */
    void rested(final RunState run) {
        sinceFillNs.set(run, sinceFillNs(run, run.atNs()));
    }

    void filled(final RunState run) {
        sinceFillNs.set(run, 0);
        countedFrom.mark(run);
    }

    long sinceFillNs(final RunState run, final long nowNs) {
        return sinceFillNs.of(run) + (counter.isOn(run) ? nowNs - countedFrom.atNs(run) : 0);
    }

    /** What has been used since it was last filled, SI. */
    double used(final RunState run, final long nowNs) {
        return amount(run, sinceFillNs(run, nowNs));
    }

    /** What a time on uses, SI. */
    double amount(final RunState run, final long onNs) {
        return use.rate() * factor(run) * onNs / NS_PER_S;
    }

    /** How long it runs on an amount, to the nearest nanosecond: decimal fractions differ in their last digits. */
    long lastsNs(final RunState run, final double amount) {
        return Math.round(amount / (use.rate() * factor(run)) * NS_PER_S);
    }

    double factor(final RunState run) {
        final long kept = factorMillionths.of(run);
        return (double) (kept == 0 ? ONE : kept) / ONE;
    }

    long factorMillionths(final RunState run) {
        return factorMillionths.of(run);
    }

    /** What its keys alone say that has been used since it was last filled, SI. */
    double uncalibrated(final RunState run) {
        return use.rate() * sinceFillNs(run, run.atNs()) / NS_PER_S;
    }

    void calibrate(final RunState run, final double factor) {
        factorMillionths.set(run, Math.round(factor * ONE));
    }

    void restore(final RunState run, final KeptLedger.Line kept) {
        sinceFillNs.set(run, Math.max(0, kept.sinceFillNs()));
        final long factor = kept.factorMillionths();
        final boolean isBelievable = factor >= LEAST_FACTOR * ONE && factor <= MOST_FACTOR * ONE;
        factorMillionths.set(run, isBelievable ? factor : 0);
    }

    Consumption use() {
        return use;
    }
}
