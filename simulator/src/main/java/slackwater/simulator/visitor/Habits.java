package slackwater.simulator.visitor;

import java.util.List;

/**
 * What the people of a neighbourhood do, as shares from 0 to 1. None of these figures has a published source (common
 * practice, no source); each can be changed by itself without moving when groups arrive.
 *
 * @param groupSizes weights of groups of 1, 2, 3 and so on
 * @param children of those who come along with an adult, how many are small children
 * @param over65 of the adults
 * @param dogs of the groups, how many bring a dog
 * @param parcels of the groups, how many are a parcel carrier instead
 * @param lingering of the groups, how many stop and look
 * @param returning of the groups, how many turn round and come back the same way
 * @param running of the small children, how many run ahead
 */
public record Habits(
        List<Double> groupSizes,
        double children,
        double over65,
        double dogs,
        double parcels,
        double lingering,
        double returning,
        double running) {

    public static final Habits USUAL =
            new Habits(List.of(0.25, 0.35, 0.20, 0.13, 0.07), 0.4, 0.1, 0.1, 0.03, 0.25, 0.1, 0.15);

    /** Adults one by one who walk straight through, as in a laboratory's corridor. */
    public static final Habits CORRIDOR = new Habits(List.of(1.0), 0, 0, 0, 0, 0, 0, 0);

    public Habits {
        groupSizes = List.copyOf(groupSizes);
        if (groupSizes.isEmpty()) {
            throw new IllegalArgumentException("groupSizes must not be empty");
        }
        for (final double share : new double[] {children, over65, dogs, parcels, lingering, returning, running}) {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("a share must be from 0 to 1 but was " + share);
            }
        }
    }

    public Habits withLingering(final double share) {
        return new Habits(groupSizes, children, over65, dogs, parcels, share, returning, running);
    }

    public Habits withReturning(final double share) {
        return new Habits(groupSizes, children, over65, dogs, parcels, lingering, share, running);
    }

    public Habits withRunning(final double share) {
        return new Habits(groupSizes, children, over65, dogs, parcels, lingering, returning, share);
    }

    public Habits withParcels(final double share) {
        return new Habits(groupSizes, children, over65, dogs, share, lingering, returning, running);
    }
}
