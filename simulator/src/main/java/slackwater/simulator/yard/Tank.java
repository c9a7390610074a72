package slackwater.simulator.yard;

import java.util.function.Predicate;
import slackwater.model.Air;
import slackwater.model.engineering.AirReference;
import slackwater.model.engineering.FreeAir;

/**
 * The air store with its compressor: an ideal gas at one temperature (handbook 1.6). Amounts are counted in m3 ANR, so that
 * tank and flows agree to the last digit. A leak is a choked hole: it takes a share of what is there. Between the moments at
 * which somebody draws or the compressor starts or stops, the pressure is an exact exponential. Full when the evening begins.
 */
final class Tank implements Plant {
    static final double ANR_PA = AirReference.ANR.pressurePa();

    private final Air air;
    private final Predicate<State> hasPower;

    /** What the compressor delivers, m3 ANR a second. */
    private final double deliveryM3PerS;

    /** Share of the absolute pressure that leaks away, a second. */
    private final double leakPerS;

    private final int basePaAbs;
    private final int deliveredM3;
    private final int leakedM3;
    private final int drawnM3;
    private final int sinceNs;
    private final int running;
    private final int starts;

    /** What has gone in and out since the evening began, m3 ANR; drawn is what lines and props took. */
    record Balance(double storedM3, double deliveredM3, double leakedM3, double drawnM3) {}

    /**
     * A store.
     *
     * @param hasPower whether what feeds the compressor is alive
     */
    Tank(final Air air, final Predicate<State> hasPower, final Slots slots) {
        this.air = air;
        this.hasPower = hasPower;
        deliveryM3PerS = AirReference.FREE_AIR.toM3(air.deliveryM3PerS(), AirReference.ANR);
        final double leakM3PerS =
                AirReference.FREE_AIR.toM3(air.plate().leakM3PerS().orElse(0), AirReference.ANR);
        leakPerS = leakM3PerS * ANR_PA / (air.tankM3() * FreeAir.absolutePa(air.cutOutPa()));
        basePaAbs = slots.takeReals(1);
        deliveredM3 = slots.takeReals(1);
        leakedM3 = slots.takeReals(1);
        drawnM3 = slots.takeReals(1);
        sinceNs = slots.takeWholes(1);
        running = slots.takeWholes(1);
        starts = slots.takeWholes(1);
    }

    /** Sets the pressure, for the beginning of an evening. */
    void fill(final State state, final double gaugePa) {
        state.setReal(basePaAbs, FreeAir.absolutePa(gaugePa));
        state.setWhole(sinceNs, state.nowNs());
    }

    /** Gauge pressure, pascals; below 0 never. */
    double pressurePa(final State state) {
        return Math.max(0, FreeAir.gaugePa(paAbs(state)));
    }

    boolean isFilling(final State state) {
        return state.flag(running) && deliveryM3PerS > 0;
    }

    /** Whether its pressure changes by itself. */
    boolean isChanging(final State state) {
        return isFilling(state) || leakPerS > 0;
    }

    /** How often the compressor has started. */
    long starts(final State state) {
        return state.whole(starts);
    }

    Balance balance(final State state) {
        final double goneM3 = deliveredSinceM3(state);
        final double changeM3 = amountM3(paAbs(state)) - amountM3(state.real(basePaAbs));
        return new Balance(
                amountM3(paAbs(state)),
                state.real(deliveredM3) + goneM3,
                state.real(leakedM3) + goneM3 - changeM3,
                state.real(drawnM3));
    }

    /** Takes m3 ANR out of it, down to the atmosphere; returns what it gave. */
    double draw(final State state, final double anrM3) {
        rebase(state);
        final double most = Math.max(0, amountM3(state.real(basePaAbs)) - amountM3(FreeAir.ATMOSPHERE_PA));
        final double given = Math.min(anrM3, most);
        state.setReal(basePaAbs, state.real(basePaAbs) - given * ANR_PA / air.tankM3());
        state.setReal(drawnM3, state.real(drawnM3) + given);
        return given;
    }

    @Override
    public void step(final State state) {
        final double pa = FreeAir.gaugePa(paAbs(state));
        final boolean isFed = hasPower.test(state);
        final boolean isRunning = state.flag(running);
        if (isRunning && (pa >= air.cutOutPa() || !isFed)) {
            rebase(state);
            state.setFlag(running, false);
        } else if (!isRunning && isFed && pa < air.cutInPa()) {
            rebase(state);
            state.setFlag(running, true);
            state.setWhole(starts, state.whole(starts) + 1);
        }
    }

    @Override
    public long wakesNs(final State state) {
        if (state.flag(running)) {
            return reachesNs(state, FreeAir.absolutePa(air.cutOutPa()), true);
        }
        return hasPower.test(state) ? reachesNs(state, FreeAir.absolutePa(air.cutInPa()), false) : ASLEEP;
    }

    /** When the pressure comes to a level from below or from above; at once where it is there already. */
    private long reachesNs(final State state, final double levelPaAbs, final boolean isRising) {
        final double basePa = state.real(basePaAbs);
        if (isRising ? paAbs(state) >= levelPaAbs : paAbs(state) < levelPaAbs) {
            return state.nowNs();
        }
        final double goesToPa = goesToPa(state);
        final boolean isReached = isRising ? goesToPa > levelPaAbs : goesToPa < levelPaAbs;
        if (!isReached) {
            return ASLEEP;
        }
        final double untilS = leakPerS > 0
                ? StrictMath.log((basePa - goesToPa) / (levelPaAbs - goesToPa)) / leakPerS
                : (levelPaAbs - basePa) / risePaPerS(state);
        return state.whole(sinceNs) + (long) (untilS * State.NS_PER_S) - State.GRID_NS;
    }

    /** What the pressure tends to; without a leak it goes on rising, or stays. */
    private double goesToPa(final State state) {
        if (leakPerS > 0) {
            return risePaPerS(state) / leakPerS;
        }
        return state.flag(running) && deliveryM3PerS > 0 ? Double.POSITIVE_INFINITY : state.real(basePaAbs);
    }

    private double paAbs(final State state) {
        final double basePa = state.real(basePaAbs);
        final double goneS = state.secondsSince(state.whole(sinceNs));
        if (leakPerS <= 0) {
            return basePa + risePaPerS(state) * goneS;
        }
        final double goesToPa = risePaPerS(state) / leakPerS;
        return goesToPa + (basePa - goesToPa) * StrictMath.exp(-leakPerS * goneS);
    }

    private double risePaPerS(final State state) {
        return state.flag(running) ? deliveryM3PerS * ANR_PA / air.tankM3() : 0;
    }

    private double deliveredSinceM3(final State state) {
        return state.flag(running) ? deliveryM3PerS * state.secondsSince(state.whole(sinceNs)) : 0;
    }

    /** Writes down what has come and gone, and begins anew from here. */
    private void rebase(final State state) {
        final Balance now = balance(state);
        state.setReal(basePaAbs, now.storedM3() * ANR_PA / air.tankM3());
        state.setReal(deliveredM3, now.deliveredM3());
        state.setReal(leakedM3, now.leakedM3());
        state.setWhole(sinceNs, state.nowNs());
    }

    private double amountM3(final double paAbs) {
        return paAbs * air.tankM3() / ANR_PA;
    }
}
