package slackwater.controller.mode;

import java.util.List;
import slackwater.controller.image.Conditions;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.latch.Latches;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.model.Begun;
import slackwater.model.Interlock;

/** The trips of one controller: each latches once all its conditions are proven, demand or not (S11). */
public final class Trips {
    private final One[] trips;
    private final int[][] tripsOfOutput;

    public Trips(final List<Interlock> interlocks, final Places places, final Layout layout) {
        trips = interlocks.stream()
                .filter(Interlock.Trip.class::isInstance)
                .map(Interlock.Trip.class::cast)
                .filter(trip -> places.outputsHere(trip.outputs()).length > 0)
                .map(trip -> new One(trip, places, layout))
                .toArray(One[]::new);
        tripsOfOutput = new int[places.outputs().size()][];
        for (int output = 0; output < tripsOfOutput.length; output++) {
            final int wanted = output;
            tripsOfOutput[output] = java.util.stream.IntStream.range(0, trips.length)
                    .filter(trip -> java.util.Arrays.stream(trips[trip].outputs).anyMatch(o -> o == wanted))
                    .toArray();
        }
    }

    /** Latches what has tripped; before the guards, so that those stay pure. */
    void update(final RunState run, final Image image, final Latches latches) {
        for (final One trip : trips) {
            if (!trip.isLatched.is(run) && trip.when.areProven(image)) {
                trip.isLatched.set(run, true);
                trip.since.mark(run);
                latches.tripped(run, image, trip.name, trip.outputs, trip.cause);
            }
        }
    }

    /** Clears every trip whose cause is proven gone, not merely unknown; returns whether all are clear. */
    boolean reset(final RunState run, final Image image, final Latches latches) {
        boolean areAllClear = true;
        for (final One trip : trips) {
            if (!trip.isLatched.is(run)) {
                continue;
            }
            if (trip.when.isAnyDisproven(image)) {
                trip.isLatched.set(run, false);
                latches.awaitArm(run, trip.outputs); // the zone may have been armed while the trip was latched
            } else {
                areAllClear = false;
            }
        }
        return areAllClear;
    }

    /** Names of the latched trips, in the order of the file. */
    public List<String> latched(final RunState run) {
        return java.util.Arrays.stream(trips)
                .filter(trip -> trip.isLatched.is(run))
                .map(trip -> trip.name)
                .toList();
    }

    /** Latches by name what was latched before a restart. */
    void restore(final RunState run, final Image image, final Latches latches, final String name) {
        for (final One trip : trips) {
            if (trip.name.equals(name)) {
                trip.isLatched.set(run, true);
                latches.tripped(run, image, name, trip.outputs, "it was latched before the restart");
            }
        }
    }

    /** Differs whenever {@link #latched} would. */
    long signature(final RunState run) {
        long sum = 0;
        for (final One trip : trips) {
            sum = 2 * sum + (trip.isLatched.is(run) ? 1 : 0);
        }
        return sum;
    }

    /** The first latched trip that concerns an output and forbids it, or -1. */
    public int refusing(final RunState run, final int output, final boolean isEnergised) {
        for (final int at : tripsOfOutput[output]) {
            final One trip = trips[at];
            if (trip.isLatched.is(run) && !(isEnergised && trip.finishes)) {
                return at;
            }
        }
        return -1;
    }

    /** Whether any latched trip concerns the output, whatever a stroke already begun may do. */
    public boolean concerns(final RunState run, final int output) {
        return refusing(run, output, false) >= 0;
    }

    public String name(final int trip) {
        return trips[trip].name;
    }

    /** What it takes to trip, in words. */
    public String cause(final int trip) {
        return trips[trip].cause;
    }

    public long sinceNs(final RunState run, final int trip) {
        return trips[trip].since.atNs(run);
    }

    private static final class One {
        private final String name;
        private final Conditions when;
        private final int[] outputs;
        private final boolean finishes;
        private final String cause;
        private final Flag isLatched;
        private final Since since;

        One(final Interlock.Trip trip, final Places places, final Layout layout) {
            name = trip.name();
            when = places.conditions(trip.when());
            outputs = places.outputsHere(trip.outputs());
            finishes = trip.begun() == Begun.FINISH;
            cause = String.join(
                    " and ", trip.when().stream().map(Object::toString).toList());
            isLatched = layout.flag("trip." + name);
            since = layout.since("trip." + name + ".since");
        }
    }
}
