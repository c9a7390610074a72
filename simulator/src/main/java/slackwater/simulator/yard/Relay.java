package slackwater.simulator.yard;

import slackwater.model.Contact;
import slackwater.model.Feed;

/**
 * The contact of a relay: it follows its coil after its operate or release time, rounded up to the yard's grid. One that
 * bounces is off again for one grid step after it first closed (handbook 5.6 case 3, 1..10 ms: common practice, no source). A coil
 * that changes back before its time is up leaves the contact where it is.
 */
final class Relay {
    private final long operatesNs;
    private final long releasesNs;
    private final boolean bounces;
    private final boolean bouncesWhenReleased;
    private final int coil;
    private final int closed;
    private final int changesNs;
    private final int bounced;

    Relay(final Feed.SwitchedBy switchedBy, final Contact contact, final Slots slots) {
        operatesNs = switchedBy.operatesIn().toNanos();
        releasesNs = switchedBy.releasesIn().toNanos();
        bounces = !switchedBy.bounces().isZero();
        bouncesWhenReleased = contact == Contact.NORMALLY_CLOSED;
        coil = slots.takeWholes(1);
        closed = slots.takeWholes(1);
        changesNs = slots.takeWholes(1);
        bounced = slots.takeWholes(1);
    }

    /** Whether a switch takes any time at all. */
    static boolean isSlow(final Feed.SwitchedBy switchedBy) {
        return !switchedBy.operatesIn().isZero()
                || !switchedBy.releasesIn().isZero()
                || !switchedBy.bounces().isZero();
    }

    void begin(final State state) {
        state.setWhole(changesNs, Plant.ASLEEP);
    }

    /** Whether its normally open contact is closed. */
    boolean isClosed(final State state) {
        return state.flag(closed);
    }

    /** The coil is energised, or not; the contact follows. */
    void drive(final State state, final boolean isEnergised) {
        if (isEnergised == state.flag(coil)) {
            return;
        }
        state.setFlag(coil, isEnergised);
        if (isEnergised == state.flag(closed)) {
            state.setWhole(changesNs, Plant.ASLEEP);
            return;
        }
        final long inNs = isEnergised ? operatesNs : releasesNs;
        state.setWhole(changesNs, State.ceilGridNs(state.nowNs() + inNs));
        state.setFlag(bounced, false);
        if (inNs == 0) {
            move(state);
        }
    }

    /** Returns whether the contact has moved. */
    boolean step(final State state) {
        if (state.nowNs() < state.whole(changesNs)) {
            return false;
        }
        move(state);
        return true;
    }

    long wakesNs(final State state) {
        return state.whole(changesNs);
    }

    private void move(final State state) {
        final boolean isClosedNow = !state.flag(closed);
        state.setFlag(closed, isClosedNow);
        final boolean isCarrying = isClosedNow != bouncesWhenReleased;
        final boolean isSettled = isClosedNow == state.flag(coil);
        final boolean isBouncing = bounces && isCarrying && isSettled && !state.flag(bounced);
        state.setFlag(bounced, isBouncing || state.flag(bounced));
        state.setWhole(changesNs, isBouncing || !isSettled ? State.nextGridNs(state.nowNs()) : Plant.ASLEEP);
    }
}
