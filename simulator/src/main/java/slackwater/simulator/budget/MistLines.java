package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import slackwater.model.Output;
import slackwater.model.engineering.Droplets;
import slackwater.model.engineering.UsualMister;
import slackwater.model.kind.Family;
import slackwater.simulator.budget.Demand.Pace;

/** Water for ultrasonic discs, and how thick their mist is. */
final class MistLines {
    private static final double S_PER_H = 3_600;

    private MistLines() {}

    static void add(final Reckoning to) {
        for (final Output mister : to.outputs(Family.MISTER)) {
            final List<String> assumed = new ArrayList<>(to.demand().assumed());
            final double usesM3PerS = usesM3PerS(mister, assumed);
            water(to, mister, usesM3PerS, assumed);
            final double airM3PerS = mister.facts().siOr("air", 0);
            if (airM3PerS > 0) {
                to.add(new Entry(Line.Group.MIST, "droplets in the air that carries " + mister.name() + " away")
                        .asks(Droplets.loadKgPerM3(usesM3PerS, airM3PerS), Measure.GRAM_PER_M3)
                        .by("water over air (handbook 2.5)")
                        .assuming(assumed)
                        .told());
                to.add(new Entry(Line.Group.MIST, "cooling by " + mister.name() + " if all of it evaporates")
                        .asks(Droplets.coolingW(usesM3PerS), Measure.WATT)
                        .by("2.45 kJ/g (handbook 2.5)")
                        .assuming(assumed)
                        .told());
            }
        }
    }

    /** Water used by a mister while it runs: as stated, or by its discs. */
    static double usesM3PerS(final Output mister, final List<String> assumed) {
        final long discs = mister.facts().count("discs").orElse(1L);
        return mister.facts().si("uses").orElseGet(() -> {
            assumed.add(discs + (discs == 1 ? " disc" : " discs")
                    + " of 350 cm3/h each (common practice, handbook 2.5); uses says it");
            return discs * UsualMister.DISC_M3_PER_S.middle();
        });
    }

    private static void water(
            final Reckoning to, final Output mister, final double usesM3PerS, final List<String> assumed) {
        final double onS = to.demand().onSecondsPerHour(mister.name(), Pace.BUSIEST_HOUR)
                * to.demand().openS()
                / S_PER_H;
        final double eveningM3 = onS * usesM3PerS;
        final Entry entry = new Entry(Line.Group.MIST, "water of " + mister.name() + " for an evening of busy hours")
                .asks(eveningM3, Measure.MILLILITRE)
                .by("rate x time on")
                .assuming(assumed);
        if (mister.facts().si("holds").isEmpty()) {
            to.add(entry.told());
            to.leaveOut("whether the water of " + mister.name() + " lasts: say holds");
            return;
        }
        final double holdsM3 = mister.facts().siOr("holds", 0);
        final double lastsH = holdsM3 / (usesM3PerS * onS / to.demand().openS()) / S_PER_H;
        to.add(entry.has(holdsM3, Measure.MILLILITRE)
                .advice("a tray of " + new Amount(eveningM3, Measure.LITRE).text() + ", or fill it up every "
                        + new Amount(lastsH * S_PER_H, Measure.MINUTE).text() + " ("
                        + new Amount(usesM3PerS * S_PER_H, Measure.LITRE).text()
                        + " an hour while it runs)")
                .judged());
    }
}
