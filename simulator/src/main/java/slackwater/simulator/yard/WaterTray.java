package slackwater.simulator.yard;

import slackwater.model.Output;

/** The tray under ultrasonic discs: used up while they run, filled again by hand. */
final class WaterTray implements Plant {
    /** The level switch falls below this and comes back a little above it (common practice, no source). */
    static final double LOW_SHARE = 0.10;

    static final double REFILLED_SHARE = 0.12;

    /** One disc's (handbook 2.5 case 8: 250..450 cm3/h). */
    private static final double USUAL_USE_M3_PER_S = 350e-6 / 3600;

    private static final double USUAL_HOLDS_M3 = 1.5e-3;

    private final int output;
    private final double usesM3PerS;
    private final double holdsM3;
    private final int baseM3;
    private final int sinceNs;
    private final int running;
    private final int enough;
    private final int covered;

    WaterTray(final int output, final Output of, final Slots slots) {
        this.output = output;
        usesM3PerS = of.facts().siOr(Fact.USES, USUAL_USE_M3_PER_S);
        holdsM3 = of.facts().siOr(Fact.HOLDS, USUAL_HOLDS_M3);
        baseM3 = slots.takeReals(1);
        sinceNs = slots.takeWholes(1);
        running = slots.takeWholes(1);
        enough = slots.takeWholes(1);
        covered = slots.takeWholes(1);
    }

    void fill(final State state) {
        state.setReal(baseM3, holdsM3);
        state.setWhole(sinceNs, state.nowNs());
    }

    double waterM3(final State state) {
        final double baseM3Now = state.real(baseM3);
        if (!state.flag(running)) {
            return baseM3Now;
        }
        return Math.max(0, baseM3Now - usesM3PerS * state.secondsSince(state.whole(sinceNs)));
    }

    boolean hasWater(final State state) {
        return state.flag(covered);
    }

    boolean isEnough(final State state) {
        return state.flag(enough);
    }

    @Override
    public void step(final State state) {
        final double waterM3 = waterM3(state);
        state.setFlag(covered, waterM3 > 0);
        state.setFlag(enough, waterM3 >= holdsM3 * (isEnough(state) ? LOW_SHARE : REFILLED_SHARE));
        final boolean isOn = state.isOn(output);
        if (isOn != state.flag(running)) {
            state.setReal(baseM3, waterM3);
            state.setWhole(sinceNs, state.nowNs());
            state.setFlag(running, isOn);
        }
    }

    @Override
    public long wakesNs(final State state) {
        if (!state.flag(running) || usesM3PerS <= 0) {
            return ASLEEP;
        }
        if (isEnough(state)) {
            return reachesNs(state, holdsM3 * LOW_SHARE);
        }
        return hasWater(state) ? reachesNs(state, 0) : ASLEEP;
    }

    private long reachesNs(final State state, final double waterM3) {
        final double goneS = (state.real(baseM3) - waterM3) / usesM3PerS;
        return state.whole(sinceNs) + Fact.nanos(goneS) - State.GRID_NS;
    }
}
