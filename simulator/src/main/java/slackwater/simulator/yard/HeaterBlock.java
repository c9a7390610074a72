package slackwater.simulator.yard;

import java.util.List;
import java.util.OptionalDouble;
import slackwater.model.engineering.BlockHeat;
import slackwater.model.engineering.Thermostat;

/**
 * The block of a fog maker as one lump of first order (handbook 2.3) with a thermostat of its own: between two events its
 * power is constant and its temperature an exponential. Fluid that is pumped takes the heat that vaporises it; a block below its
 * working temperature only spits, and what it spits is reckoned to take no heat. It is ready when its thermostat first
 * switches off.
 */
final class HeaterBlock implements Plant {
    /** Below the thermostat's 250 degC: 200 degC, the coldest working temperature (handbook 2.4 case 4, 2.3 case 10). */
    static final double SPITS_BELOW_K = 50;

    /** So much warmer again it makes fog (a guess). */
    static final double FOGS_AGAIN_K = 5;

    /** The ready signal goes before the block spits, as a thermostat's contact does (common practice, no source). */
    static final double NOT_READY_BELOW_K = 40;

    /** A temperature that was waited for is reached although rounding leaves it just short. */
    private static final double NEAR_K = 1e-6;

    private final int output;
    private final List<FogPump> pumps;
    private final BlockHeat block;
    private final double powerW;
    private final Thermostat thermostat;
    private final int baseC;
    private final int heaterW;
    private final int takenW;
    private final int inJ;
    private final int lostJ;
    private final int intoFluidJ;
    private final int sinceNs;
    private final int nextNs;
    private final int calling;
    private final int ready;
    private final int hot;

    HeaterBlock(final int output, final BlockFigures figures, final List<FogPump> pumps, final Slots slots) {
        this.output = output;
        this.pumps = List.copyOf(pumps);
        block = figures.block();
        powerW = figures.powerW();
        thermostat = figures.thermostat();
        baseC = slots.takeReals(1);
        heaterW = slots.takeReals(1);
        takenW = slots.takeReals(1);
        inJ = slots.takeReals(1);
        lostJ = slots.takeReals(1);
        intoFluidJ = slots.takeReals(1);
        sinceNs = slots.takeWholes(1);
        nextNs = slots.takeWholes(1);
        calling = slots.takeWholes(1);
        ready = slots.takeWholes(1);
        hot = slots.takeWholes(1);
    }

    /** As cold as the air. */
    void begin(final State state) {
        state.setReal(baseC, block.ambientC());
        state.setFlag(calling, true);
        state.setWhole(nextNs, ASLEEP);
    }

    boolean isReady(final State state) {
        return state.flag(ready);
    }

    boolean isHot(final State state) {
        return state.flag(hot);
    }

    /** Whether it draws its current: it has power and its thermostat calls for heat. */
    boolean isHeating(final State state) {
        return state.isOn(output) && state.flag(calling);
    }

    double powerW() {
        return powerW;
    }

    double temperatureC(final State state) {
        return block.afterC(state.real(baseC), netW(state), goneS(state));
    }

    HeatBalance balance(final State state) {
        final double goneS = goneS(state);
        return new HeatBalance(
                state.real(inJ) + state.real(heaterW) * goneS,
                block.capacityJPerK() * (temperatureC(state) - block.ambientC()),
                state.real(lostJ) + lossJ(state, goneS),
                state.real(intoFluidJ) + state.real(takenW) * goneS);
    }

    @Override
    public void step(final State state) {
        final boolean isDue = state.nowNs() >= state.whole(nextNs);
        if (isDue) {
            look(state, temperatureC(state));
        }
        final double heaterNowW = isHeating(state) ? powerW : 0;
        final double takenNowW = isHot(state) ? pumpedW(state) : 0;
        if (isDue || heaterNowW != state.real(heaterW) || takenNowW != state.real(takenW)) {
            rebase(state);
            state.setReal(heaterW, heaterNowW);
            state.setReal(takenW, takenNowW);
            state.setWhole(nextNs, nextNs(state));
        }
    }

    @Override
    public long wakesNs(final State state) {
        return state.whole(nextNs);
    }

    private void look(final State state, final double nowC) {
        final double offC = thermostat.highC();
        if (nowC >= offC - NEAR_K) {
            state.setFlag(calling, false);
            state.setFlag(ready, true);
        } else {
            state.setFlag(calling, state.flag(calling) || nowC <= thermostat.lowC() + NEAR_K);
            state.setFlag(ready, isReady(state) && nowC > offC - NOT_READY_BELOW_K + NEAR_K);
        }
        final double hotC = offC - SPITS_BELOW_K;
        state.setFlag(hot, isHot(state) ? nowC > hotC + NEAR_K : nowC >= hotC + FOGS_AGAIN_K - NEAR_K);
    }

    private void rebase(final State state) {
        final double goneS = goneS(state);
        state.setReal(inJ, state.real(inJ) + state.real(heaterW) * goneS);
        state.setReal(lostJ, state.real(lostJ) + lossJ(state, goneS));
        state.setReal(intoFluidJ, state.real(intoFluidJ) + state.real(takenW) * goneS);
        state.setReal(baseC, temperatureC(state));
        state.setWhole(sinceNs, state.nowNs());
    }

    /** The integral of the loss over the time since the last event; it knows nothing of what is stored. */
    private double lossJ(final State state, final double goneS) {
        final double endsC = block.finalC(netW(state));
        final double tauS = block.timeConstantS();
        final double changed = -StrictMath.expm1(-goneS / tauS);
        final double kelvinS = (endsC - block.ambientC()) * goneS + (state.real(baseC) - endsC) * tauS * changed;
        return kelvinS / block.resistanceKPerW();
    }

    private long nextNs(final State state) {
        final double offC = thermostat.highC();
        final double turnsC = state.flag(calling) ? offC : thermostat.lowC();
        final double readyC = isReady(state) ? offC - NOT_READY_BELOW_K : offC;
        final double hotC = offC - SPITS_BELOW_K + (isHot(state) ? 0 : FOGS_AGAIN_K);
        return Math.min(reachesNs(state, turnsC), Math.min(reachesNs(state, readyC), reachesNs(state, hotC)));
    }

    private long reachesNs(final State state, final double toC) {
        final OptionalDouble inS = block.reachesS(state.real(baseC), toC, netW(state));
        return inS.isEmpty() ? ASLEEP : state.whole(sinceNs) + Fact.nanos(inS.getAsDouble());
    }

    private double pumpedW(final State state) {
        double sumW = 0;
        for (int i = 0; i < pumps.size(); i++) {
            sumW += pumps.get(i).isFlowing(state) ? pumps.get(i).takesW() : 0;
        }
        return sumW;
    }

    private double netW(final State state) {
        return state.real(heaterW) - state.real(takenW);
    }

    private double goneS(final State state) {
        return state.secondsSince(state.whole(sinceNs));
    }
}
