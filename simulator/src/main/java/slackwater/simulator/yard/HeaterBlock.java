package slackwater.simulator.yard;

import java.util.List;
import slackwater.model.Output;

/**
 * The block of a fog maker as one lump of first order (handbook 2.3), its warmth counted from 0, the yard's air at 20 degC, to
 * 1, its own thermostat's 250 degC. It says that it is ready when it has warmed for its stated time. A burst draws on its warmth.
 */
final class HeaterBlock implements Plant {
    static final double READY_SHARE = 0.9;

    /** The ready signal goes before the block is too cold, as a thermostat's contact does. */
    static final double NOT_READY_SHARE = 0.85;

    /** 200 degC between 20 and 250 degC: the coldest working temperature (handbook 2.4 case 4, 2.3 case 10). */
    static final double HOT_SHARE = (200.0 - 20.0) / (250.0 - 20.0);

    /** A block cools slower than it is heated (common practice, no source). */
    private static final double COOLS_TIMES = 3;

    /** Where a burst would lead to with the heater on: it lasts 46 s of a 5 min warm-up's block (handbook 2.4 case 5: 20..60 s). */
    private static final double PUMPED_SHARE = 0.5;

    private static final double USUAL_WARM_UP_S = 240;
    private static final long PUMPED = 1;
    private static final long HEATED = 2;

    private final int output;
    private final List<Integer> pumps;
    private final double tauS;
    private final int baseShare;
    private final int sinceNs;
    private final int use;
    private final int ready;
    private final int hot;

    HeaterBlock(final int output, final Output of, final List<Integer> pumps, final Slots slots) {
        this.output = output;
        this.pumps = List.copyOf(pumps);
        tauS = Fact.secondsOr(of.facts(), Fact.WARMS_IN, USUAL_WARM_UP_S) / -StrictMath.log(1 - READY_SHARE);
        baseShare = slots.takeReals(1);
        sinceNs = slots.takeWholes(1);
        use = slots.takeWholes(1);
        ready = slots.takeWholes(1);
        hot = slots.takeWholes(1);
    }

    boolean isReady(final State state) {
        return state.flag(ready);
    }

    boolean isHot(final State state) {
        return state.flag(hot);
    }

    /** 0 at the temperature of the air, 1 at the thermostat's. */
    double warmth(final State state) {
        final double target = target(state);
        final double goneS = state.secondsSince(state.whole(sinceNs));
        return target + (state.real(baseShare) - target) * StrictMath.exp(-goneS / tauNowS(state));
    }

    @Override
    public void step(final State state) {
        final double warmth = warmth(state);
        state.setFlag(ready, warmth >= (isReady(state) ? NOT_READY_SHARE : READY_SHARE));
        state.setFlag(hot, warmth >= HOT_SHARE);
        final long wanted = (state.isOn(output) ? HEATED : 0) + (isPumped(state) ? PUMPED : 0);
        if (wanted != state.whole(use)) {
            state.setReal(baseShare, warmth);
            state.setWhole(sinceNs, state.nowNs());
            state.setWhole(use, wanted);
        }
    }

    @Override
    public long wakesNs(final State state) {
        final double target = target(state);
        final double nextReady = isReady(state) ? NOT_READY_SHARE : READY_SHARE;
        final long readyNs = (target >= nextReady) == isReady(state) ? ASLEEP : reachesNs(state, nextReady);
        final long hotNs = (target >= HOT_SHARE) == isHot(state) ? ASLEEP : reachesNs(state, HOT_SHARE);
        return Math.min(readyNs, hotNs);
    }

    private long reachesNs(final State state, final double share) {
        final double target = target(state);
        final double goneS = tauNowS(state) * StrictMath.log((state.real(baseShare) - target) / (share - target));
        return state.whole(sinceNs) + Fact.nanos(goneS) - State.GRID_NS;
    }

    private double target(final State state) {
        if (state.whole(use) < HEATED) {
            return 0;
        }
        return state.whole(use) == HEATED ? 1 : PUMPED_SHARE;
    }

    private double tauNowS(final State state) {
        return state.whole(use) == 0 ? COOLS_TIMES * tauS : tauS;
    }

    private boolean isPumped(final State state) {
        for (final int pump : pumps) {
            if (state.isOn(pump)) {
                return true;
            }
        }
        return false;
    }
}
