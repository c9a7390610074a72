package slackwater.simulator.budget;

import slackwater.simulator.budget.Demand.Pace;

/** How many of those who come in an hour each cue can greet. */
final class EveningLines {
    private EveningLines() {}

    static void add(final Reckoning to) {
        final Demand demand = to.demand();
        for (final CueCost cost : demand.cues()) {
            final double greeted = demand.playsPerHour(cost, Pace.USUAL_HOUR);
            to.add(new Entry(Line.Group.EVENING, "groups that " + cost.cue().name() + " can greet, of those who come")
                    .asks(demand.groupsPerHour(), Measure.PER_HOUR)
                    .has(greeted, Measure.PER_HOUR)
                    .by("one-server loss system, again after " + new Amount(demand.periodS(cost), Measure.SECOND).text()
                            + " (handbook 5.5)")
                    .assuming(demand.assumed())
                    .told());
        }
    }
}
