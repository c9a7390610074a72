package slackwater.controller.guard;

import java.util.ArrayList;
import java.util.List;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Count;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.event.Event;
import slackwater.model.event.Refusal;
import slackwater.model.kind.Family;

/**
 * Judges every demanded output in the order of the rig: permitted, or refused with a reason. A candidate counts for those
 * after it only if nothing at all refuses it, its own driver included.
 */
public final class GuardStage {
    private static final int REFUSED_BY_NOBODY = 0;

    private final Guard[][] guardsOf;
    private final Guard[] observers;
    private final ReleaseGuard[] releases;
    private final Flag[] hasFreshDemand;
    private final boolean[] consumes;
    private final Count[] refusedBy;

    /** Whom the guards ask. */
    public record Parts(
            Places places,
            List<Interlock> interlocks,
            Observations observations,
            DriverLimits limits,
            Modes modes,
            LatchedTrips trips,
            Bottles bottles) {}

    /** The mode table, as the guards see it. */
    public interface Modes extends SurroundingsGuard.Surroundings {}

    /** The latched trips, as the guards see them. */
    public interface LatchedTrips extends TripGuard.Latched {}

    public GuardStage(final Parts parts, final Layout layout) {
        final Places places = parts.places();
        final List<Output> outputs = places.outputs();
        final List<List<Guard>> perOutput = new ArrayList<>();
        final List<Guard> everyOne = new ArrayList<>();
        final List<ReleaseGuard> oneShots = new ArrayList<>();
        final Guard mode = new SurroundingsGuard(places, parts.modes());
        final Guard trip = new TripGuard(places, parts.trips());
        final Guard limit = new LimitGuard(places, parts.limits());
        final Guard bottle = new BottleGuard(places, parts.bottles());
        outputs.forEach(output -> perOutput.add(new ArrayList<>(List.of(mode, trip, limit))));
        for (int o = 0; o < outputs.size(); o++) {
            if (parts.bottles().hasBottle(o)) {
                perOutput.get(o).add(bottle);
            }
            if (outputs.get(o).family() == Family.RELEASE) {
                final ReleaseGuard release = new ReleaseGuard(places, o, layout);
                oneShots.add(release);
                perOutput.get(o).add(release);
            }
        }
        for (final Interlock interlock : parts.interlocks()) {
            final int[] members = places.outputsHere(interlock.outputs());
            if (members.length > 0 && !(interlock instanceof Interlock.Trip)) {
                final Guard guard = guard(interlock, parts, layout);
                everyOne.add(guard);
                for (final int member : members) {
                    perOutput.get(member).add(guard);
                }
            }
        }
        guardsOf =
                perOutput.stream().map(guards -> guards.toArray(Guard[]::new)).toArray(Guard[][]::new);
        observers = everyOne.toArray(Guard[]::new);
        releases = oneShots.toArray(ReleaseGuard[]::new);
        hasFreshDemand = outputs.stream()
                .map(output -> layout.flag("output." + output.name() + ".fresh"))
                .toArray(Flag[]::new);
        refusedBy = outputs.stream()
                .map(output -> layout.count("output." + output.name() + ".refused-by", Integer.MAX_VALUE))
                .toArray(Count[]::new);
        consumes = new boolean[outputs.size()];
        for (int o = 0; o < consumes.length; o++) {
            consumes[o] = outputs.get(o).family().consumesDemand();
        }
    }

    /** Judges all that is demanded. */
    public void judge(final RunState run, final Image image) {
        for (final ReleaseGuard release : releases) {
            release.update(run, image);
        }
        for (final Guard guard : observers) {
            guard.update(run, image);
        }
        for (int output = 0; output < guardsOf.length; output++) {
            image.permitted[output] = image.demand[output] && isPermitted(run, image, output);
            image.next[output] = image.permitted[output];
            if (!image.demand[output]) {
                hasFreshDemand[output].set(run, false);
                refusedBy[output].set(run, REFUSED_BY_NOBODY);
            }
        }
    }

    /** Told of each output that really changed. */
    public void observe(final RunState run, final int output, final boolean isEnergised) {
        if (isEnergised) {
            hasFreshDemand[output].set(run, false);
        }
        for (final Guard guard : observers) {
            guard.observe(run, output, isEnergised);
        }
        for (final Guard guard : guardsOf[output]) {
            if (guard instanceof ReleaseGuard) {
                guard.observe(run, output, isEnergised);
            }
        }
    }

    /** Every reason why the output may not be energised now, whether it is asked for or not; none when it may. */
    public List<Refusal> whyNot(final RunState run, final Image image, final int output) {
        final List<Refusal> reasons = new ArrayList<>();
        for (final Guard guard : guardsOf[output]) {
            if (!guard.permits(run, image, output)) {
                reasons.add(guard.refusal(run, image, output));
            }
        }
        return reasons;
    }

    /** Names of the releases that are spent. */
    public List<String> spent(final RunState run) {
        final List<String> names = new ArrayList<>();
        for (final ReleaseGuard release : releases) {
            if (release.isSpent(run)) {
                names.add(release.name());
            }
        }
        return names;
    }

    /** Restores what was spent before a restart. */
    public void restore(final RunState run, final List<String> spent) {
        for (final ReleaseGuard release : releases) {
            release.restore(run, spent);
        }
    }

    private boolean isPermitted(final RunState run, final Image image, final int output) {
        if (image.renewed[output]) {
            hasFreshDemand[output].set(run, true);
        }
        final boolean isUsedUp = consumes[output] && !image.energised[output] && !hasFreshDemand[output].is(run);
        if (isUsedUp) {
            return false; // said once when it was refused; only a new step renews it (S11)
        }
        final Guard[] guards = guardsOf[output];
        for (int i = 0; i < guards.length; i++) {
            if (!guards[i].permits(run, image, output)) {
                refuse(run, image, output, i);
                return false;
            }
        }
        refusedBy[output].set(run, REFUSED_BY_NOBODY);
        return true;
    }

    private void refuse(final RunState run, final Image image, final int output, final int guard) {
        if (image.renewed[output] || refusedBy[output].of(run) != guard + 1L) {
            refusedBy[output].set(run, guard + 1L);
            image.note(new Event.Refused(run.atNs(), guardsOf[output][guard].refusal(run, image, output)));
        }
        hasFreshDemand[output].set(run, false);
    }

    private static Guard guard(final Interlock interlock, final Parts parts, final Layout layout) {
        if (interlock instanceof Interlock.Permissive permissive) {
            return new PermissiveGuard(permissive, parts.places(), parts.observations());
        }
        if (interlock instanceof Interlock.Exclusion exclusion) {
            return new ExclusionGuard(exclusion, parts.places(), layout);
        }
        if (interlock instanceof Interlock.Shed shed) {
            return new ShedGuard(shed, parts.places(), parts.observations(), layout);
        }
        if (interlock instanceof Interlock.LoadLimit load) {
            return new LoadGuard(load, parts.places(), layout);
        }
        if (interlock instanceof Interlock.FlashLimit flash) {
            return new FlashGuard(flash, parts.places(), layout);
        }
        throw new IllegalArgumentException("interlock=" + interlock.name() + " has no guard");
    }
}
