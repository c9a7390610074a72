package slackwater.controller.ledger;

import java.util.OptionalDouble;
import slackwater.controller.image.Image;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.model.Consumption;
import slackwater.model.Output;
import slackwater.model.event.Event;
import slackwater.model.event.Spans;

/**
 * A bottle or tray that is counted down. While its output runs, two timers know when it will be low and when empty; at rest
 * the meter knows. What it holds is unknown after a ledger was lost, and then nothing starts until it is filled.
 */
final class Bottle {
    private final String name;
    private final Meter meter;
    private final Counter counter;
    private final double holds;
    private final double warnAt;
    private final long longestOnNs;
    private final Flag isUnknown;
    private final Flag hasWarned;
    private final Timer low;
    private final Timer empty;
    private final LastHour lastHour;
    private final Since changed;

    Bottle(final Output output, final Meter meter, final Counter counter, final double warnAt, final Layout layout) {
        name = output.name();
        this.meter = meter;
        this.counter = counter;
        this.warnAt = warnAt;
        holds = meter.use().holds().orElseThrow();
        longestOnNs =
                output.limits().longestOn().map(longest -> longest.toNanos()).orElse(0L);
        final String place = "ledger." + name;
        isUnknown = layout.flag(place + ".unknown");
        hasWarned = layout.flag(place + ".has-warned");
        low = layout.timer(place + ".low");
        empty = layout.timer(place + ".empty");
        lastHour = new LastHour(name, layout);
        changed = layout.since(place + ".changed");
    }

    /** After the meter. */
    void started(final RunState run) {
        final long leftNs = atRestLeftNs(run);
        empty.start(run, leftNs);
        if (hasWarned.is(run)) {
            low.stop(run);
        } else {
            low.start(run, Math.max(0, leftNs - lowNs(run)));
        }
    }

    /** After the meter, before the counter. */
    void rested(final RunState run) {
        lastHour.add(run, counter.beganNs(run), run.atNs());
        low.stop(run);
        empty.stop(run);
        changed.mark(run);
    }

    void filled(final RunState run) {
        meter.filled(run);
        isUnknown.set(run, false);
        hasWarned.set(run, false);
        countAnew(run);
        changed.mark(run);
    }

    /** What is left changed otherwise than by running. */
    void countAnew(final RunState run) {
        if (counter.isOn(run)) {
            started(run);
        }
    }

    /** Warns once a fill; what is unknown has had its own warning. */
    void update(final RunState run, final Image image) {
        if (hasWarned.is(run) || isUnknown.is(run)) {
            return;
        }
        final boolean isLow = counter.isOn(run) ? low.isDue(run) : atRestLeftNs(run) <= lowNs(run);
        if (isLow) {
            hasWarned.set(run, true);
            image.note(new Event.RunningLow(run.atNs(), name, leftText(run), lasts(run)));
        }
    }

    boolean hasEnough(final RunState run, final boolean isEnergised) {
        if (isUnknown.is(run)) {
            return false;
        }
        if (isEnergised) {
            return !empty.isDue(run);
        }
        final long leftNs = atRestLeftNs(run);
        return leftNs > 0 && leftNs >= longestOnNs;
    }

    String observed(final RunState run) {
        if (isUnknown.is(run)) {
            return "nobody has known what it holds";
        }
        return leftText(run) + " have been left, and its longest-on uses "
                + meter.use().of().text(meter.amount(run, longestOnNs)) + ",";
    }

    long sinceNs(final RunState run) {
        return changed.atNs(run);
    }

    /** What is left, SI; empty while unknown. */
    OptionalDouble left(final RunState run, final long nowNs) {
        return isUnknown.is(run)
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, holds - meter.used(run, nowNs)));
    }

    boolean isUnknown(final RunState run) {
        return isUnknown.is(run);
    }

    boolean hasWarned(final RunState run) {
        return hasWarned.is(run);
    }

    void lose(final RunState run, final Image image, final String why) {
        isUnknown.set(run, true);
        image.note(new Event.FillUnknown(run.atNs(), name, why));
    }

    void restore(final RunState run, final Image image, final KeptLedger.Line kept) {
        hasWarned.set(run, kept.hasWarned());
        if (!kept.isFillKnown()) {
            lose(run, image, "it has not been filled since the ledger was lost");
        }
    }

    private String leftText(final RunState run) {
        final Consumption.Kind of = meter.use().of();
        return of.text(left(run, run.atNs()).orElse(0)) + " of " + of.text(holds);
    }

    /** How long the rest lasts, at the use of the last hour. */
    private String lasts(final RunState run) {
        final long beganNs = counter.isOn(run) ? counter.beganNs(run) : run.atNs();
        final double share = lastHour.share(run, beganNs, run.atNs());
        final long leftNs = counter.isOn(run) ? empty.leftNs(run) : atRestLeftNs(run);
        return share > 0
                ? "at the last hour's use that lasts " + Spans.text((long) (leftNs / share))
                : "none was used in the last hour";
    }

    /** The time on that is left, while it does not run. */
    private long atRestLeftNs(final RunState run) {
        return Math.max(0, meter.lastsNs(run, holds) - meter.sinceFillNs(run, run.atNs()));
    }

    private long lowNs(final RunState run) {
        return meter.lastsNs(run, holds * warnAt);
    }
}
