package slackwater.controller.ledger;

import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Tally;

/** Counts one output's starts and time on: what is over as a number, what still lasts since a moment. */
final class Counter {
    private final Tally starts;
    private final Tally onNs;
    private final Tally isOn;
    private final Since began;

    Counter(final String output, final Layout layout) {
        final String place = "ledger." + output;
        starts = layout.tally(place + ".starts");
        onNs = layout.tally(place + ".on");
        isOn = layout.tally(place + ".is-on");
        began = layout.since(place + ".began");
    }

    void started(final RunState run) {
        starts.add(run, 1);
        isOn.set(run, 1);
        began.mark(run);
    }

    void rested(final RunState run) {
        onNs.set(run, onNs(run, run.atNs()));
        isOn.set(run, 0);
    }

    boolean isOn(final RunState run) {
        return isOn.of(run) != 0;
    }

    long beganNs(final RunState run) {
        return began.atNs(run);
    }

    long starts(final RunState run) {
        return starts.of(run);
    }

    long onNs(final RunState run, final long nowNs) {
        return onNs.of(run) + (isOn(run) ? nowNs - began.atNs(run) : 0);
    }

    void restore(final RunState run, final KeptLedger.Line kept) {
        starts.set(run, kept.starts());
        onNs.set(run, kept.onNs());
    }
}
