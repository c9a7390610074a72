package slackwater.simulator.budget;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.model.Limits;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.WalkWay;
import slackwater.model.calendar.ShowCalendar;
import slackwater.model.engineering.Arrivals;

/**
 * How often a show plays what: one after another without a pause, in the busiest hour, and in a usual hour. Every group is
 * reckoned to set off every cue, which is the harder case.
 *
 * @param cues what each costs
 * @param groupsPerHour as [way] says, or as is usual
 * @param openS how long the evening is
 */
record Demand(List<CueCost> cues, List<Output> outputs, double groupsPerHour, double openS, List<String> assumed) {
    private static final double S_PER_H = 3_600;
    private static final double USUAL_GROUPS_PER_HOUR = 20;
    private static final double USUAL_EVENING_S = 4 * S_PER_H;
    private static final double MS_PER_S = 1_000;

    /** An hour that only one in twenty exceeds. */
    private static final double BUSIEST_SHARE = 0.05;

    private static final Instant USUAL_DAY = Instant.parse("2026-10-24T12:00:00Z");

    Demand {
        cues = List.copyOf(cues);
        outputs = List.copyOf(outputs);
        assumed = List.copyOf(assumed);
    }

    /** How often something happens in an hour. */
    enum Pace {
        /** One playing after another, as fast as the show lets them. */
        WITHOUT_PAUSE,
        /** Groups come as in an hour that only one in twenty exceeds. */
        BUSIEST_HOUR,
        /** Groups come as stated. */
        USUAL_HOUR
    }

    static Demand of(final Rig rig, final Show show) {
        final List<String> assumed = new ArrayList<>();
        final Optional<WalkWay> way = rig.surroundings().way();
        if (way.isEmpty()) {
            assumed.add("20 groups an hour (common practice, no source); [way] groups-per-hour says it");
        }
        final Optional<Double> openS = openS(rig, show);
        if (openS.isEmpty()) {
            assumed.add("an evening of 4 h (common practice, no source); [schedule] in the show says it");
        }
        return new Demand(
                show.cues().stream().map(CueCost::of).toList(),
                rig.outputs(),
                way.map(WalkWay::groupsPerHour).orElse(USUAL_GROUPS_PER_HOUR),
                openS.orElse(USUAL_EVENING_S),
                assumed);
    }

    /** The shortest time from one playing of a cue to the next. */
    double periodS(final CueCost cost) {
        double periodS = Math.max(
                Math.max(CueCost.seconds(cost.cue().holdOff()), cost.lengthS()),
                cost.cue().againAfterClear().map(CueCost::seconds).orElse(0.0));
        for (final Output output : outputs) {
            final CueCost.Use use = cost.use(output.name());
            if (use.starts() > 0) {
                periodS = Math.max(periodS, ownPeriodS(output.limits(), use));
            }
        }
        return Math.max(periodS, 1);
    }

    /** Playings of a cue in an hour. */
    double playsPerHour(final CueCost cost, final Pace pace) {
        final double periodS = periodS(cost);
        return switch (pace) {
            case WITHOUT_PAUSE -> S_PER_H / periodS;
            case BUSIEST_HOUR -> answered(busiestGroups(), periodS);
            case USUAL_HOUR -> answered(groupsPerHour, periodS);
        };
    }

    /** Groups that come in an hour that only one in twenty exceeds. */
    double busiestGroups() {
        int groups = 0;
        while (groupsPerHour > 0
                && Arrivals.perHour(groupsPerHour).chanceOfAtLeast(groups + 1, S_PER_H) > BUSIEST_SHARE) {
            groups++;
        }
        return groups;
    }

    /** Seconds for which an output is energised in an hour; the longest uses while there is no pause, else the mean. */
    double onSecondsPerHour(final String output, final Pace pace) {
        double sumS = 0;
        for (final CueCost cost : cues) {
            final CueCost.Use use = cost.use(output);
            sumS += playsPerHour(cost, pace) * (pace == Pace.WITHOUT_PAUSE ? use.longestS() : use.meanS());
        }
        return sumS;
    }

    /** Starts of an output in an hour. */
    double startsPerHour(final String output, final Pace pace) {
        double sum = 0;
        for (final CueCost cost : cues) {
            final CueCost.Use use = cost.use(output);
            sum += playsPerHour(cost, pace) * (pace == Pace.WITHOUT_PAUSE ? use.starts() : use.meanStarts());
        }
        return sum;
    }

    /** The longest single use of an output in any cue, seconds. */
    double longestUseS(final String output) {
        return cues.stream()
                .mapToDouble(cost -> cost.use(output).longestS()
                        / Math.max(1, cost.use(output).starts()))
                .max()
                .orElse(0);
    }

    private static double answered(final double groups, final double periodS) {
        return groups > 0 ? Arrivals.perHour(groups).answeredPerHour(periodS) : 0;
    }

    private static double ownPeriodS(final Limits limits, final CueCost.Use use) {
        final double byStarts = limits.starts()
                .map(starts -> CueCost.seconds(starts.within()) / starts.most() * use.starts())
                .orElse(0.0);
        return Math.max(byStarts, use.longestS() + CueCost.seconds(limits.shortestOff()));
    }

    private static Optional<Double> openS(final Rig rig, final Show show) {
        return show.schedule()
                .flatMap(schedule -> rig.place().map(place -> new ShowCalendar(schedule, place)))
                .flatMap(calendar -> calendar.windowAfter(USUAL_DAY.toEpochMilli()))
                .map(window -> Duration.ofMillis(window.closesMs() - window.opensMs()))
                .map(open -> open.toMillis() / MS_PER_S);
    }
}
