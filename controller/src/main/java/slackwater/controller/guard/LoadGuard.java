package slackwater.controller.guard;

import java.util.Locale;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.model.Interlock;
import slackwater.model.Load;
import slackwater.model.event.Refusal;

/** The sum of currents stays within this controller's share; inrush is reserved for its time (S12, S13). */
final class LoadGuard implements Guard {
    /** Sums of decimal fractions differ in their last digits from what was written; a billionth of the limit is no load. */
    private static final double ROUNDING = 1e-9;

    private final Interlock.LoadLimit limit;
    private final Places places;
    private final double shareAmps;
    private final int[] members;
    private final double[] amps;
    private final double[] inrushAmps;
    private final long[] inrushNs;
    private final Timer[] inrush;
    private final Since changed;

    LoadGuard(final Interlock.LoadLimit limit, final Places places, final Layout layout) {
        this.limit = limit;
        this.places = places;
        shareAmps = limit.shares().getOrDefault(places.controller(), limit.amps()) * (1 + ROUNDING);
        members = places.outputsHere(limit.outputs());
        amps = new double[members.length];
        inrushAmps = new double[members.length];
        inrushNs = new long[members.length];
        inrush = new Timer[members.length];
        for (int i = 0; i < members.length; i++) {
            final Load load = places.outputs().get(members[i]).load();
            amps[i] = load.amps();
            inrushAmps[i] = Math.max(load.amps(), load.inrushAmps());
            inrushNs[i] = load.inrushLasts().toNanos();
            inrush[i] = layout.timer("load." + limit.name() + "."
                    + places.outputs().get(members[i]).name());
        }
        changed = layout.since("load." + limit.name());
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        // what is on already was counted when it started; only a start can exceed the limit
        return image.energised[output] || sum(run, image, output) <= shareAmps;
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        return new Refusal(
                places.outputs().get(output).name(),
                limit.name(),
                String.format(
                        Locale.ROOT,
                        "with it the load would have been %.2f A of %.2f A",
                        sum(run, image, output),
                        shareAmps),
                changed.atNs(run),
                "others are at rest");
    }

    @Override
    public void observe(final RunState run, final int output, final boolean isEnergised) {
        for (int i = 0; i < members.length; i++) {
            if (members[i] == output) {
                changed.mark(run);
                if (isEnergised) {
                    inrush[i].start(run, inrushNs[i]);
                } else {
                    inrush[i].stop(run);
                }
            }
        }
    }

    /** The load with the output started: everything on or about to be, with the inrush of what has just started. */
    private double sum(final RunState run, final Image image, final int output) {
        double sum = 0;
        for (int i = 0; i < members.length; i++) {
            final int member = members[i];
            if (member == output || (image.next[member] && !image.energised[member])) {
                sum += inrushAmps[i];
            } else if (image.next[member]) {
                sum += inrush[i].isRunning(run) ? inrushAmps[i] : amps[i];
            }
        }
        return sum;
    }
}
