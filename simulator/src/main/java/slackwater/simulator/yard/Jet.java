package slackwater.simulator.yard;

import slackwater.model.Output;

/** A valve that only blows: each opening takes its air, and nothing moves. */
final class Jet implements Plant {
    private final int output;
    private final AirSection air;
    private final double freeAirM3;
    private final int wasOn;

    Jet(final int output, final Output of, final AirSection air, final Slots slots) {
        this.output = output;
        this.air = air;
        freeAirM3 = of.facts().siOr(Fact.AIR_PER_STROKE, 0);
        wasOn = slots.takeWholes(1);
    }

    @Override
    public void step(final State state) {
        final boolean isOn = state.isOn(output);
        if (isOn && !state.flag(wasOn) && air.hasEnough(state)) {
            air.draw(state, freeAirM3);
        }
        state.setFlag(wasOn, isOn);
    }

    @Override
    public long wakesNs(final State state) {
        return ASLEEP;
    }
}
