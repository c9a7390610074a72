package slackwater.controller.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.controller.command.Scales;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Tally;
import slackwater.model.Consumption;
import slackwater.model.LedgerRules;
import slackwater.model.Output;
import slackwater.model.event.Event;

/**
 * What one controller's outputs have used, counted from what the pins did. What is left in a bottle or tray is part of what
 * decides the future; starts and times on are tallies.
 */
public final class Ledger implements Scales {
    private static final int NONE = -1;
    private static final String LOST = "the ledger could not be read, so nobody knows what it holds";

    private final Places places;
    private final RefillButtons buttons;
    private final Counter[] counters;
    private final int[] meterOf;
    private final int[] bottleOf;
    private final Meter[] meters;
    private final Bottle[] bottles;
    /** Whether something has happened that a restart must not lose; decides nothing. */
    private final Tally hasNews;

    public Ledger(final Places places, final LedgerRules rules, final Layout layout) {
        this.places = places;
        buttons = new RefillButtons(places, layout);
        hasNews = layout.tally("ledger.has-news");
        final int outputs = places.outputs().size();
        counters = new Counter[outputs];
        meterOf = new int[outputs];
        bottleOf = new int[outputs];
        final List<Meter> metered = new ArrayList<>();
        final List<Bottle> bottled = new ArrayList<>();
        for (int o = 0; o < outputs; o++) {
            final Output output = places.outputs().get(o);
            counters[o] = new Counter(output.name(), layout);
            meterOf[o] = NONE;
            bottleOf[o] = NONE;
            final Optional<Consumption> use = Consumption.of(output).filter(each -> each.of() != Consumption.Kind.AIR);
            if (use.isPresent()) {
                final Meter meter = new Meter(use.get(), output.name(), counters[o], layout);
                meterOf[o] = metered.size();
                metered.add(meter);
                if (use.get().runsDry()) {
                    bottleOf[o] = bottled.size();
                    bottled.add(new Bottle(output, meter, counters[o], rules.warnAt(), layout));
                }
            }
        }
        meters = metered.toArray(Meter[]::new);
        bottles = bottled.toArray(Bottle[]::new);
    }

    /** Takes up what outlived a restart; where that cannot be read, nothing that is counted down starts (deny by default). */
    public void restore(final RunState run, final Image image, final Optional<KeptLedger> kept) {
        for (int output = 0; output < counters.length; output++) {
            if (kept.isEmpty()) {
                if (hasBottle(output)) {
                    bottles[bottleOf[output]].lose(run, image, LOST);
                }
                continue;
            }
            final Optional<KeptLedger.Line> line = kept.get().of(name(output));
            if (line.isPresent()) {
                restore(run, image, output, line.get());
            }
        }
    }

    private void restore(final RunState run, final Image image, final int output, final KeptLedger.Line line) {
        counters[output].restore(run, line);
        if (meterOf[output] != NONE) {
            meters[meterOf[output]].restore(run, line);
        }
        if (hasBottle(output)) {
            bottles[bottleOf[output]].restore(run, image, line);
        }
    }

    /** What must outlive a restart. */
    public KeptLedger kept(final RunState run) {
        final List<KeptLedger.Line> lines = new ArrayList<>();
        for (int output = 0; output < counters.length; output++) {
            final boolean isMetered = meterOf[output] != NONE;
            final boolean isBottled = hasBottle(output);
            lines.add(new KeptLedger.Line(
                    name(output),
                    counters[output].starts(run),
                    counters[output].onNs(run, run.atNs()),
                    isMetered ? meters[meterOf[output]].sinceFillNs(run, run.atNs()) : 0,
                    isMetered ? meters[meterOf[output]].factorMillionths(run) : 0,
                    !isBottled || !bottles[bottleOf[output]].isUnknown(run),
                    isBottled && bottles[bottleOf[output]].hasWarned(run)));
        }
        return new KeptLedger(lines);
    }

    /** Takes refills and warns. */
    public void update(final RunState run, final Image image) {
        for (int button = 0; button < buttons.count(); button++) {
            if (buttons.isPressed(run, image, button)) {
                fill(run, image, button);
            }
        }
        for (final Bottle bottle : bottles) {
            bottle.update(run, image);
        }
    }

    private void fill(final RunState run, final Image image, final int button) {
        for (int output = 0; output < counters.length; output++) {
            if (hasBottle(output) && buttons.refills(button, output)) {
                final Meter meter = meters[meterOf[output]];
                final String used = bottles[bottleOf[output]].isUnknown(run)
                        ? "nobody knows how much"
                        : meter.use().of().text(meter.used(run, run.atNs()));
                image.note(new Event.Refilled(run.atNs(), name(output), buttons.name(button), used));
                bottles[bottleOf[output]].filled(run);
                hasNews.set(run, 1);
            }
        }
    }

    /** Told of each output that really changed. */
    public void observe(final RunState run, final int output, final boolean isEnergised) {
        if (isEnergised) {
            counters[output].started(run);
            if (meterOf[output] != NONE) {
                meters[meterOf[output]].started(run);
            }
            if (hasBottle(output)) {
                bottles[bottleOf[output]].started(run);
            }
            return;
        }
        if (meterOf[output] != NONE) {
            meters[meterOf[output]].rested(run);
        }
        if (hasBottle(output)) {
            bottles[bottleOf[output]].rested(run);
            hasNews.set(run, 1);
        }
        counters[output].rested(run);
    }

    @Override
    public Optional<String> weigh(
            final RunState run, final Image image, final int output, final double usedKg, final String who) {
        if (meterOf[output] == NONE) {
            return Optional.of(name(output) + " says neither flow nor uses in the rig, so there is nothing to compare");
        }
        if (hasBottle(output) && bottles[bottleOf[output]].isUnknown(run)) {
            return Optional.of("nobody knows what " + name(output) + " has used; fill it up first and weigh later");
        }
        final Meter meter = meters[meterOf[output]];
        final Consumption.Kind of = meter.use().of();
        final double counted = meter.uncalibrated(run);
        if (counted <= 0) {
            return Optional.of(name(output) + " has used nothing since it was last filled");
        }
        final double weighed = of == Consumption.Kind.WATER ? usedKg / Consumption.WATER_KG_PER_M3 : usedKg;
        final double factor = weighed / counted;
        final String ratio = of.text(weighed) + " weighed, " + of.text(counted) + " by the rig, a factor of "
                + String.format(Locale.ROOT, "%.4f", factor);
        if (!(factor >= Meter.LEAST_FACTOR && factor <= Meter.MOST_FACTOR)) {
            return Optional.of(ratio + "; only 0.25 to 4 is believed: weigh again, or correct the rig");
        }
        meter.calibrate(run, factor);
        if (hasBottle(output)) {
            bottles[bottleOf[output]].countAnew(run);
        }
        hasNews.set(run, 1);
        image.note(new Event.Calibrated(run.atNs(), name(output), who, ratio));
        return Optional.empty();
    }

    /** Every output's account at a moment that is no earlier than the last scan, in the order of the rig. */
    public List<LedgerEntry> entries(final RunState run, final long nowNs) {
        final List<LedgerEntry> entries = new ArrayList<>();
        for (int output = 0; output < counters.length; output++) {
            entries.add(entry(run, output, nowNs));
        }
        return entries;
    }

    private LedgerEntry entry(final RunState run, final int output, final long nowNs) {
        final Counter counter = counters[output];
        final long starts = counter.starts(run);
        final long onNs = counter.onNs(run, nowNs);
        final Optional<Consumption> use = Consumption.of(places.outputs().get(output));
        if (use.isEmpty()) {
            return new LedgerEntry(name(output), starts, onNs, 0, OptionalDouble.empty(), "", 1);
        }
        final Consumption.Kind of = use.get().of();
        if (meterOf[output] == NONE) {
            final double used = of.shown(starts * use.get().rate());
            return new LedgerEntry(name(output), starts, onNs, used, OptionalDouble.empty(), of.unit(), 1);
        }
        final Meter meter = meters[meterOf[output]];
        final OptionalDouble left =
                hasBottle(output) ? bottles[bottleOf[output]].left(run, nowNs) : OptionalDouble.empty();
        return new LedgerEntry(
                name(output),
                starts,
                onNs,
                of.shown(meter.used(run, nowNs)),
                left.isPresent() ? OptionalDouble.of(of.shown(left.getAsDouble())) : left,
                of.unit(),
                meter.factor(run));
    }

    /** Takes whether anything counted down came to rest, was filled or weighed: a restart must not lose that. */
    public boolean takeNews(final RunState run) {
        final boolean isNews = hasNews.of(run) != 0;
        hasNews.set(run, 0);
        return isNews;
    }

    /** Whether anything runs, so that the ledger must be kept now and then. */
    public boolean isCounting(final RunState run) {
        for (final Counter counter : counters) {
            if (counter.isOn(run)) {
                return true;
            }
        }
        return false;
    }

    public boolean hasBottle(final int output) {
        return bottleOf[output] != NONE;
    }

    /** Whether enough is left for another start, or for going on. */
    public boolean hasEnough(final RunState run, final int output, final boolean isEnergised) {
        return bottles[bottleOf[output]].hasEnough(run, isEnergised);
    }

    /** What is left, in words. */
    public String observed(final RunState run, final int output) {
        return bottles[bottleOf[output]].observed(run);
    }

    public long sinceNs(final RunState run, final int output) {
        return bottles[bottleOf[output]].sinceNs(run);
    }

    public String clearsWhen(final int output) {
        return "you fill it up and press "
                + buttons.of(output)
                        .map(name -> "the refill button " + name)
                        .orElse("a refill button, once it has one");
    }

    private String name(final int output) {
        return places.outputs().get(output).name();
    }
}
