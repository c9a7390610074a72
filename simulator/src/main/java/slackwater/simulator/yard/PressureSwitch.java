package slackwater.simulator.yard;

import slackwater.model.Input;

/** Active above its set point, and until the pressure has fallen a tenth below it. */
final class PressureSwitch implements Plant {
    /** A tenth of the set point (common practice, no source). */
    static final double FALLS_SHARE = 0.9;

    private static final double USUAL_SET_POINT_PA = 180_000;

    private final int input;
    private final AirSection air;
    private final double setPointPa;

    PressureSwitch(final int input, final Input of, final AirSection air) {
        this.input = input;
        this.air = air;
        setPointPa = of.facts().siOr(Fact.SET_POINT, USUAL_SET_POINT_PA);
    }

    static boolean isActive(final boolean wasActive, final double pa, final double setPointPa) {
        return pa >= (wasActive ? setPointPa * FALLS_SHARE : setPointPa);
    }

    @Override
    public void step(final State state) {
        state.setActive(input, isActive(state.isActive(input), air.pressurePa(state), setPointPa));
    }

    @Override
    public long wakesNs(final State state) {
        return ASLEEP;
    }
}
