package slackwater.simulator.yard;

import slackwater.model.Output;

/** A prop that drops once and is spent until somebody hangs it again (S15). */
final class Release implements Prop {
    private static final long HUNG = 0;
    private static final long DROPPING = 1;
    private static final long SPENT = 2;
    private static final double USUAL_DROP_M = 1;

    private final int output;
    private final double massKg;
    private final long dropsForNs;
    private final int phase;
    private final int sinceNs;

    Release(final int output, final Output of, final Slots slots) {
        this.output = output;
        massKg = of.facts().siOr(Fact.MOVING_MASS, 0);
        dropsForNs = Fact.nanos(StrictMath.sqrt(2 * of.facts().siOr(Fact.TRAVEL, USUAL_DROP_M) / GRAVITY));
        phase = slots.takeWholes(1);
        sinceNs = slots.takeWholes(1);
    }

    boolean isHung(final State state) {
        return state.whole(phase) == HUNG;
    }

    /** The keeper's hand; nobody catches a prop in the air. */
    void hang(final State state) {
        if (state.whole(phase) == SPENT) {
            state.setWhole(phase, HUNG);
        }
    }

    @Override
    public void step(final State state) {
        if (state.whole(phase) == HUNG && state.isOn(output)) {
            state.setWhole(phase, DROPPING);
            state.setWhole(sinceNs, state.nowNs());
        } else if (isMoving(state) && state.nowNs() - state.whole(sinceNs) >= dropsForNs) {
            state.setWhole(phase, SPENT);
        }
    }

    @Override
    public long wakesNs(final State state) {
        return isMoving(state) ? state.nowNs() : ASLEEP;
    }

    @Override
    public boolean isMoving(final State state) {
        return state.whole(phase) == DROPPING;
    }

    @Override
    public double energyJ(final State state) {
        final double speedMps = GRAVITY * state.secondsSince(state.whole(sinceNs));
        return isMoving(state) ? massKg * speedMps * speedMps / 2 : 0;
    }
}
