package slackwater.controller.mode;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.Latches;
import slackwater.controller.latch.LockoutNames;
import slackwater.controller.run.RunState;

/** Puts what must outlive a restart into words, and back (S5). */
final class Restart {
    private static final String STOP = "stop";
    private static final String FAULT = "fault";
    private static final String TRIP = "trip ";
    private static final String OUTPUT = "output ";
    private static final String ZONE = "zone ";
    private static final String BEFORE = "it was latched before the restart";

    private final Places places;
    private final Latches latches;
    private final Trips trips;
    private final LockoutNames names;

    Restart(final ModeStage.Parts parts) {
        places = parts.places();
        latches = parts.latches();
        trips = parts.trips();
        names = parts.names();
    }

    /** An unreadable store counts as locked out: nobody can say who has hands in a prop. */
    void restore(final RunState run, final Image image, final Optional<Kept> kept) {
        if (kept.isEmpty()) {
            for (int zone = 0; zone < places.zones().size(); zone++) {
                latches.lockOutZone(run, image, zone, names.maskOf(LockoutNames.UNREADABLE));
            }
            return;
        }
        kept.get().latched().forEach(what -> latch(run, image, what));
        kept.get().lockouts().forEach((target, people) -> {
            final long mask = people.stream().mapToLong(names::maskOf).reduce(0, (a, b) -> a | b);
            lockOut(run, image, target, mask);
        });
    }

    Kept kept(final RunState run, final List<String> spent, final long openedDay) {
        final List<String> latched = new ArrayList<>();
        if (latches.isStopped(run)) {
            latched.add(STOP);
        }
        if (latches.isControllerFaulted(run)) {
            latched.add(FAULT);
        }
        final Map<String, List<String>> lockouts = new TreeMap<>();
        for (int zone = 0; zone < places.zones().size(); zone++) {
            final String name = ZONE + places.zones().get(zone).name();
            if (latches.isZoneFaulted(run, zone)) {
                latched.add(name);
            }
            putLockout(lockouts, name, latches.zoneLockout(run, zone));
        }
        for (int output = 0; output < places.outputs().size(); output++) {
            final String name = OUTPUT + places.outputs().get(output).name();
            if (latches.isOutputFaulted(run, output)) {
                latched.add(name);
            }
            putLockout(lockouts, name, latches.outputLockout(run, output));
        }
        trips.latched(run).forEach(trip -> latched.add(TRIP + trip));
        return new Kept(latched, lockouts, spent, openedDay);
    }

    private void putLockout(final Map<String, List<String>> lockouts, final String target, final long people) {
        if (people != 0) {
            lockouts.put(target, names.namesOf(people));
        }
    }

    private void latch(final RunState run, final Image image, final String what) {
        if (what.equals(STOP)) {
            latches.stop(run, image, BEFORE);
        } else if (what.equals(FAULT)) {
            latches.faultController(run, image, BEFORE);
        } else if (what.startsWith(TRIP)) {
            trips.restore(run, image, latches, what.substring(TRIP.length()));
        } else if (what.startsWith(ZONE)) {
            eachZone(what, zone -> latches.faultZone(run, image, zone, BEFORE));
        } else {
            eachOutput(what, output -> latches.faultOutput(run, image, output, BEFORE));
        }
    }

    private void lockOut(final RunState run, final Image image, final String target, final long people) {
        eachZone(target, zone -> latches.lockOutZone(run, image, zone, people));
        eachOutput(target, output -> latches.lockOutOutput(run, image, output, people));
    }

    private void eachZone(final String target, final java.util.function.IntConsumer act) {
        for (int zone = 0; zone < places.zones().size(); zone++) {
            if (target.equals(ZONE + places.zones().get(zone).name())) {
                act.accept(zone);
            }
        }
    }

    private void eachOutput(final String target, final java.util.function.IntConsumer act) {
        for (int output = 0; output < places.outputs().size(); output++) {
            if (target.equals(OUTPUT + places.outputs().get(output).name())) {
                act.accept(output);
            }
        }
    }
}
