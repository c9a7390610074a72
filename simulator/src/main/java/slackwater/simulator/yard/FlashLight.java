package slackwater.simulator.yard;

import slackwater.model.Output;

/**
 * A strobe: one flash each time it gets power, or flashes by itself, the first at once and then one each time 1 / rate has passed,
 * for as long as it has power (S14).
 */
final class FlashLight implements Plant {
    private final int output;
    private final double rateHz;
    private final int counted;
    private final int sinceNs;
    private final int lit;

    FlashLight(final int output, final Output of, final Slots slots) {
        this.output = output;
        rateHz = of.facts().siOr(Fact.FLASH_RATE, 0);
        counted = slots.takeWholes(1);
        sinceNs = slots.takeWholes(1);
        lit = slots.takeWholes(1);
    }

    /** All evening; they count on while it sleeps. */
    long flashes(final State state) {
        return state.whole(counted) + (state.flag(lit) ? running(state, state.nowNs() + 1) : 0);
    }

    @Override
    public void step(final State state) {
        final boolean isOn = state.isOn(output);
        if (isOn == state.flag(lit)) {
            return;
        }
        if (!isOn) {
            state.setWhole(counted, state.whole(counted) + running(state, state.nowNs()));
        }
        state.setWhole(sinceNs, state.nowNs());
        state.setFlag(lit, isOn);
    }

    @Override
    public long wakesNs(final State state) {
        return ASLEEP;
    }

    /** Flashes before a moment, since it got its power. */
    private long running(final State state, final long beforeNs) {
        if (rateHz <= 0) {
            return 1;
        }
        final long goneNs = beforeNs - state.whole(sinceNs);
        final long about = (long) (goneNs / State.NS_PER_S * rateHz);
        long count = Math.max(0, about - 1);
        while (Fact.nanos(count / rateHz) < goneNs) {
            count++;
        }
        return count;
    }
}
