package slackwater.simulator.yard;

import java.util.function.Predicate;
import slackwater.model.Air;

/**
 * The air store with its compressor: an ideal gas at one temperature (handbook 1.6). Free air is counted at 1.01325 bar, as
 * catalogues of compressors do. Full when the evening begins.
 */
final class Tank implements Plant {
    static final double FREE_AIR_PA = 101_325;

    private final Air air;
    private final Predicate<State> hasPower;
    private final double paPerS;
    private final int basePa;
    private final int sinceNs;
    private final int running;

    /**
     * A store.
     *
     * @param hasPower whether what feeds the compressor is alive
     */
    Tank(final Air air, final Predicate<State> hasPower, final Slots slots) {
        this.air = air;
        this.hasPower = hasPower;
        paPerS = FREE_AIR_PA * air.deliveryM3PerS() / air.tankM3();
        basePa = slots.takeReals(1);
        sinceNs = slots.takeWholes(1);
        running = slots.takeWholes(1);
    }

    /** Sets the pressure, for the beginning of an evening. */
    void fill(final State state, final double gaugePa) {
        state.setReal(basePa, gaugePa);
        state.setWhole(sinceNs, state.nowNs());
    }

    /** Gauge pressure, pascals. */
    double pressurePa(final State state) {
        final double pa = state.real(basePa);
        return state.flag(running) ? pa + paPerS * state.secondsSince(state.whole(sinceNs)) : pa;
    }

    boolean isFilling(final State state) {
        return state.flag(running) && paPerS > 0;
    }

    /** Takes free air out of it, down to nothing. */
    void draw(final State state, final double freeAirM3) {
        fill(state, Math.max(0, pressurePa(state) - FREE_AIR_PA * freeAirM3 / air.tankM3()));
    }

    @Override
    public void step(final State state) {
        final double pa = pressurePa(state);
        final boolean isFed = hasPower.test(state);
        if (state.flag(running) && pa >= air.cutOutPa()) {
            fill(state, air.cutOutPa());
            state.setFlag(running, false);
        } else if (state.flag(running) && !isFed) {
            fill(state, pa);
            state.setFlag(running, false);
        } else if (!state.flag(running) && isFed && pa < air.cutInPa()) {
            fill(state, pa);
            state.setFlag(running, true);
        }
    }

    @Override
    public long wakesNs(final State state) {
        if (!state.flag(running)) {
            return state.real(basePa) < air.cutInPa() && hasPower.test(state) ? state.nowNs() : ASLEEP;
        }
        if (paPerS <= 0) {
            return ASLEEP;
        }
        final double untilS = (air.cutOutPa() - state.real(basePa)) / paPerS;
        return state.whole(sinceNs) + (long) (untilS * State.NS_PER_S) - State.GRID_NS;
    }
}
