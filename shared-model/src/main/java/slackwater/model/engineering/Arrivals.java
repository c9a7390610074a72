package slackwater.model.engineering;

/**
 * Groups that come independently of each other (Poisson; handbook 5.5, from memory), and a prop that ignores them while it plays
 * and resets: one place, no queue. The loss holds for any shape of the busy time (Erlang, from memory).
 *
 * @param groupsPerS mean rate, above 0
 */
public record Arrivals(double groupsPerS) {
    private static final double S_PER_H = 3_600;

    public Arrivals {
        Given.positive("groupsPerS", groupsPerS);
    }

    public static Arrivals perHour(final double groupsPerHour) {
        return new Arrivals(groupsPerHour / S_PER_H);
    }

    /** Chance of exactly so many groups within a time. */
    public double chanceOf(final int groups, final double withinS) {
        Given.notNegative("groups", groups);
        final double mean = mean(withinS);
        double chance = StrictMath.exp(-mean);
        for (int n = 1; n <= groups; n++) {
            chance *= mean / n;
        }
        return chance;
    }

    /** Chance of so many groups or more within a time. */
    public double chanceOfAtLeast(final int groups, final double withinS) {
        double fewer = 0;
        for (int n = 0; n < groups; n++) {
            fewer += chanceOf(n, withinS);
        }
        return 1 - fewer;
    }

    public double meanGapS() {
        return 1 / groupsPerS;
    }

    /** Chance that the next group comes within a time after one. */
    public double chanceOfGapBelow(final double gapS) {
        return 1 - StrictMath.exp(-mean(gapS));
    }

    /** Standard deviation of the number of groups within a time. */
    public double deviation(final double withinS) {
        return Math.sqrt(mean(withinS));
    }

    /** Share of the groups that meets a busy prop. */
    public double lostShare(final double busyS) {
        final double load = mean(busyS);
        return load / (1 + load);
    }

    /** Groups an hour that the prop answers. */
    public double answeredPerHour(final double busyS) {
        return groupsPerS * S_PER_H * (1 - lostShare(busyS));
    }

    /** The longest busy time with which no more than a share of the groups is lost, seconds. */
    public double mostBusyS(final double lostShare) {
        if (!(lostShare >= 0 && lostShare < 1)) {
            throw new IllegalArgumentException("lostShare=" + lostShare + " is not 0 or more and below 1");
        }
        return lostShare / (1 - lostShare) / groupsPerS;
    }

    private double mean(final double withinS) {
        return groupsPerS * Given.notNegative("withinS", withinS);
    }
}
