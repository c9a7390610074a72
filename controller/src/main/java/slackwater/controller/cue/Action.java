package slackwater.controller.cue;

import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Step;

/** One energise step, compiled: wishes its outputs from one deadline to another, blinking if it says so. */
final class Action {
    private final int[] outputs;
    private final long blinkHalfNs;
    private final Timer from;
    private final Timer until;
    private final Timer blink;
    private final Flag hasBegun;
    private final Flag isDark;

    Action(final Step.Energise step, final int[] outputs, final String place, final Layout layout) {
        this.outputs = outputs;
        blinkHalfNs = step.blink().map(whole -> whole.toNanos() / 2).orElse(0L);
        from = layout.timer(place + ".from");
        until = layout.timer(place + ".until");
        blink = layout.timer(place + ".blink");
        hasBegun = layout.flag(place + ".begun");
        isDark = layout.flag(place + ".dark");
    }

    void schedule(final RunState run, final long startsInNs, final long endsInNs) {
        from.start(run, startsInNs);
        until.start(run, endsInNs);
        hasBegun.set(run, false);
        isDark.set(run, false);
    }

    void goOn(final RunState run, final Asking asking) {
        if (!from.isDue(run) || until.isDue(run)) {
            return;
        }
        boolean isNew = !hasBegun.is(run);
        hasBegun.set(run, true);
        if (blinkHalfNs > 0) {
            isNew |= turn(run, isNew);
            if (isDark.is(run)) {
                return;
            }
        }
        for (final int output : outputs) {
            asking.energise(output, isNew);
        }
    }

    void end(final RunState run) {
        from.stop(run);
        until.stop(run);
        blink.stop(run);
    }

    /** Turns between bright and dark at each half period; returns whether it has just become bright. */
    private boolean turn(final RunState run, final boolean isFirst) {
        if (isFirst) {
            blink.start(run, blinkHalfNs);
            return true;
        }
        if (!blink.isDue(run)) {
            return false;
        }
        isDark.set(run, !isDark.is(run));
        blink.start(run, blinkHalfNs);
        return !isDark.is(run);
    }

    int[] outputs() {
        return outputs;
    }
}
