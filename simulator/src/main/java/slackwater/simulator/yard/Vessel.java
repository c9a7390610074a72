package slackwater.simulator.yard;

/** What a pump or a tray is fed from: used up while that runs, filled again by hand, and how long it ran on without. */
final class Vessel {
    private final double holds;
    private final double usesPerS;
    private final int usedBase;
    private final int sinceNs;
    private final int running;
    private final int filled;
    private final int dryBaseNs;
    private final int drySinceNs;
    private final int dry;

    /**
     * A full one.
     *
     * @param holds when full, infinite where nobody told
     * @param usesPerS in the same unit, while what it feeds runs
     */
    Vessel(final double holds, final double usesPerS, final Slots slots) {
        this.holds = holds;
        this.usesPerS = usesPerS;
        usedBase = slots.takeReals(1);
        sinceNs = slots.takeWholes(1);
        running = slots.takeWholes(1);
        filled = slots.takeWholes(1);
        dryBaseNs = slots.takeWholes(1);
        drySinceNs = slots.takeWholes(1);
        dry = slots.takeWholes(1);
    }

    double holds() {
        return holds;
    }

    void fill(final State state) {
        state.setReal(usedBase, 0);
        state.setWhole(sinceNs, state.nowNs());
        state.setFlag(filled, holds > 0);
    }

    double left(final State state) {
        return holds - used(state);
    }

    /** Since it was filled. */
    double used(final State state) {
        final double base = state.real(usedBase);
        return state.flag(running) ? Math.min(holds, base + usesPerS * state.secondsSince(state.whole(sinceNs))) : base;
    }

    /** Whether anything is left, as last looked at. */
    boolean isFilled(final State state) {
        return state.flag(filled);
    }

    /** Whether it is fed from now: it runs and something is left. */
    boolean isFeeding(final State state) {
        return state.flag(running) && state.flag(filled);
    }

    /** Seconds for which it has run on nothing, all evening. */
    double dryS(final State state) {
        final long nowNs = state.flag(dry) ? state.nowNs() - state.whole(drySinceNs) : 0;
        return (state.whole(dryBaseNs) + nowNs) / State.NS_PER_S;
    }

    void step(final State state, final boolean isOn) {
        final double used = used(state);
        state.setFlag(filled, used < holds);
        if (isOn != state.flag(running)) {
            state.setReal(usedBase, used);
            state.setWhole(sinceNs, state.nowNs());
            state.setFlag(running, isOn);
        }
        final boolean isDry = isOn && used >= holds;
        if (isDry != state.flag(dry)) {
            if (!isDry) {
                state.setWhole(dryBaseNs, state.whole(dryBaseNs) + state.nowNs() - state.whole(drySinceNs));
            }
            state.setWhole(drySinceNs, state.nowNs());
            state.setFlag(dry, isDry);
        }
    }

    /** When it is empty, or never while nothing is drawn from it. */
    long wakesNs(final State state) {
        return isFilled(state) ? reachesNs(state, 0) : Plant.ASLEEP;
    }

    /** A grid step before only so much is left. */
    long reachesNs(final State state, final double left) {
        if (!state.flag(running) || usesPerS <= 0 || holds == Double.POSITIVE_INFINITY) {
            return Plant.ASLEEP;
        }
        final double goneS = (holds - left - state.real(usedBase)) / usesPerS;
        return state.whole(sinceNs) + Fact.nanos(goneS) - State.GRID_NS;
    }
}
