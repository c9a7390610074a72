package slackwater.simulator.visitor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.model.WalkWay;

/**
 * Draws an evening's visitors from a seed: groups arrive independently of each other (a Poisson process, handbook 5.5)
 * and walk at published speeds (handbook 5.4). Every concern has its own stream, and every group its own part of it, so
 * that changing a habit moves nothing but what it is about (S22). Groups do not see each other: a fast
 * one walks through a slow one.
 */
public final class CrowdMaker {
    /** A festival's main gate; more than this is a mistake in a rig. */
    public static final double GROUPS_PER_HOUR_MAX = 10_000;

    private static final double NS_PER_HOUR = 3.6e12;

    private CrowdMaker() {}

    /** Nobody, where the rig has no way to walk on. */
    public static Crowd draw(final Optional<WalkWay> way, final long seed, final long fromNs, final long untilNs) {
        return way.map(present -> draw(present, Habits.USUAL, seed, fromNs, untilNs))
                .orElse(Crowd.NOBODY);
    }

    /**
     * An evening with habits of its own.
     *
     * @param way with 0 to {@value #GROUPS_PER_HOUR_MAX} groups an hour
     * @param fromNs the first group may arrive at this moment
     * @param untilNs no group arrives at this moment or later; those who are inside stay to the end of their way
     */
    public static Crowd draw(
            final WalkWay way, final Habits habits, final long seed, final long fromNs, final long untilNs) {
        if (!(way.groupsPerHour() >= 0 && way.groupsPerHour() <= GROUPS_PER_HOUR_MAX)) {
            throw new IllegalArgumentException(
                    "groupsPerHour must be from 0 to " + GROUPS_PER_HOUR_MAX + " but was " + way.groupsPerHour());
        }
        final Chance all = Chance.seeded(seed);
        final Chance arrivals = all.split();
        final GroupMaker groups = new GroupMaker(way, habits, new Streams(all));
        final List<Visitor> visitors = new ArrayList<>();
        final double meanGapNs = NS_PER_HOUR / way.groupsPerHour();
        double afterNs = arrivals.gap() * meanGapNs;
        while (afterNs < untilNs - fromNs) {
            groups.addGroup(fromNs + (long) afterNs, visitors);
            afterNs += arrivals.gap() * meanGapNs;
        }
        return Crowd.of(visitors);
    }

    /** The concerns in a fixed order: a new one goes to the end. */
    record Streams(Chance beings, Chance paces, Chance places, Chance lingering, Chance returning, Chance running) {
        Streams(final Chance all) {
            this(all.split(), all.split(), all.split(), all.split(), all.split(), all.split());
        }

        /** One group's own part of every stream. */
        Streams split() {
            return new Streams(
                    beings.split(),
                    paces.split(),
                    places.split(),
                    lingering.split(),
                    returning.split(),
                    running.split());
        }
    }
}
