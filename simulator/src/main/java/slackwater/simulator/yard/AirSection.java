package slackwater.simulator.yard;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * The hoses behind one air-supply valve, normally exhausting (S15): they fill and empty like a volume behind a hole. The
 * times are those of a small rig with 6 mm hose (common practice, no source). Without such a valve they always hold air.
 */
final class AirSection implements Plant {
    /** Three of these to 95 %: 1.5 s. */
    private static final double FILLS_TAU_S = 0.5;

    /** Three of these down to 5 %: 0.5 s. */
    private static final double EMPTIES_TAU_S = 0.5 / 3;

    private static final double SETTLED_PA = 500;

    /** Below this part of the working pressure a prop is not lifted (common practice, no source). */
    private static final double ENOUGH_SHARE = 0.4;

    private static final double STEP_S = State.GRID_NS / State.NS_PER_S;
    private static final double FILLS_SHARE = 1 - StrictMath.exp(-STEP_S / FILLS_TAU_S);
    private static final double EMPTIES_SHARE = 1 - StrictMath.exp(-STEP_S / EMPTIES_TAU_S);

    private final OptionalInt supply;
    private final double workingPa;
    private final Optional<Tank> tank;
    private final int pressurePa;

    AirSection(final OptionalInt supply, final double workingPa, final Optional<Tank> tank, final Slots slots) {
        this.supply = supply;
        this.workingPa = workingPa;
        this.tank = tank;
        pressurePa = slots.takeReals(1);
    }

    /** As it stands before the evening: empty behind a valve, full without one. */
    void begin(final State state) {
        state.setReal(pressurePa, targetPa(state));
    }

    /** Gauge pressure, pascals. */
    double pressurePa(final State state) {
        return state.real(pressurePa);
    }

    boolean hasEnough(final State state) {
        return state.real(pressurePa) >= ENOUGH_SHARE * workingPa;
    }

    void draw(final State state, final double freeAirM3) {
        tank.ifPresent(store -> store.draw(state, freeAirM3));
    }

    @Override
    public void step(final State state) {
        final double targetPa = targetPa(state);
        final double pa = state.real(pressurePa);
        final double share = targetPa > pa ? FILLS_SHARE : EMPTIES_SHARE;
        final double nextPa = pa + (targetPa - pa) * share;
        state.setReal(pressurePa, Math.abs(targetPa - nextPa) <= SETTLED_PA ? targetPa : nextPa);
    }

    @Override
    public long wakesNs(final State state) {
        final boolean isFollowing = isOpen(state) && tank.isPresent() && isStarvedAndFilling(tank.get(), state);
        return isFollowing || targetPa(state) != state.real(pressurePa) ? state.nowNs() : ASLEEP;
    }

    private boolean isStarvedAndFilling(final Tank store, final State state) {
        return store.isFilling(state) && store.pressurePa(state) < workingPa;
    }

    private boolean isOpen(final State state) {
        return supply.isEmpty() || state.isOn(supply.getAsInt());
    }

    private double targetPa(final State state) {
        if (!isOpen(state)) {
            return 0;
        }
        return tank.isPresent() ? Math.min(workingPa, tank.get().pressurePa(state)) : workingPa;
    }
}
