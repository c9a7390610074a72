package slackwater.simulator.yard;

import java.util.List;

/**
 * What has left one source, as a chain of puffs that drift, grow with the way they have gone, and thin: each is a round
 * cloud whose density falls off by Gauss's curve. The oldest is replaced.
 */
final class Puffs {
    private static final int COUNT = 16;
    private static final long EVERY_NS = 500_000_000L;
    private static final long LIVE_NS = 8_000_000_000L;

    /** Half width of a puff where it leaves (a guess). */
    private static final double BEGINS_M = 0.15;

    /** Half width gained for each metre drifted: half the turbulence near the ground (a guess). */
    private static final double GROWS = 0.1;

    /** Farther out there is next to nothing of it. */
    private static final double REACHES_WIDTHS = 3;

    private final FogSource source;
    private final List<Fan> fans;
    private final double lightM2;
    private final int bornNs;
    private final int xM;
    private final int yM;
    private final int driftedM;
    private final int next;
    private final int made;
    private final int lastNs;
    private final int alive;

    Puffs(final FogSource source, final List<Fan> fans, final Slots slots) {
        this.source = source;
        this.fans =
                fans.stream().filter(fan -> fan.zone().equals(source.zone())).toList();
        lightM2 = source.kgPerS() * EVERY_NS / State.NS_PER_S * source.extinctionM2PerKg();
        bornNs = slots.takeWholes(COUNT);
        xM = slots.takeReals(COUNT);
        yM = slots.takeReals(COUNT);
        driftedM = slots.takeReals(COUNT);
        next = slots.takeWholes(1);
        made = slots.takeWholes(1);
        lastNs = slots.takeWholes(1);
        alive = slots.takeWholes(1);
    }

    void begin(final State state) {
        state.setWhole(lastNs, -EVERY_NS);
        for (int i = 0; i < COUNT; i++) {
            state.setWhole(bornNs + i, -LIVE_NS);
        }
    }

    /** Whether any fog of it is about, or leaves it now. */
    boolean isBusy(final State state) {
        return state.flag(alive) || source.isBlowing().test(state);
    }

    /** Drifts for a while with the wind as it is now, and lets the next puff go. */
    void step(final State state, final Wind wind, final double forS) {
        boolean isAny = false;
        if (state.flag(alive)) {
            final double windMPerS = wind.speedMPerS(state.nowNs());
            final double towardsRad = wind.towardsRad(state.nowNs());
            for (int i = 0; i < COUNT; i++) {
                if (isAlive(state, i)) {
                    isAny = true;
                    drift(state, i, windMPerS * forS, towardsRad, forS);
                }
            }
        }
        if (source.isBlowing().test(state) && state.nowNs() - state.whole(lastNs) >= EVERY_NS) {
            isAny = true;
            letGo(state);
        }
        state.setFlag(alive, isAny);
    }

    private void drift(
            final State state, final int puff, final double windM, final double towardsRad, final double forS) {
        double dxM = windM * StrictMath.cos(towardsRad);
        double dyM = windM * StrictMath.sin(towardsRad);
        for (final Fan fan : fans) {
            if (state.isOn(fan.output())) {
                final double awayRad = fan.towardsRad(state.real(xM + puff), state.real(yM + puff), towardsRad);
                dxM += fan.speedMPerS() * forS * StrictMath.cos(awayRad);
                dyM += fan.speedMPerS() * forS * StrictMath.sin(awayRad);
            }
        }
        state.setReal(xM + puff, state.real(xM + puff) + dxM);
        state.setReal(yM + puff, state.real(yM + puff) + dyM);
        state.setReal(driftedM + puff, state.real(driftedM + puff) + StrictMath.sqrt(dxM * dxM + dyM * dyM));
    }

    private void letGo(final State state) {
        final int puff = (int) state.whole(next);
        state.setWhole(next, (puff + 1) % COUNT);
        state.setWhole(made, state.whole(made) + 1);
        state.setWhole(lastNs, state.nowNs());
        state.setWhole(bornNs + puff, state.nowNs());
        state.setReal(xM + puff, source.at().xM());
        state.setReal(yM + puff, source.at().yM());
        state.setReal(driftedM + puff, 0);
    }

    /** What it takes of the light along a long line past it, as an optical depth: 1 leaves 37 %. */
    double depth(final State state, final Line line) {
        if (!state.flag(alive)) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            if (isAlive(state, i)) {
                final double widthM = BEGINS_M + GROWS * state.real(driftedM + i);
                final double offM2 = line.distanceM2(state.real(xM + i), state.real(yM + i));
                if (offM2 < REACHES_WIDTHS * REACHES_WIDTHS * widthM * widthM) {
                    sum += lightM2 / (2 * Math.PI * widthM * widthM) * StrictMath.exp(-offM2 / (2 * widthM * widthM));
                }
            }
        }
        return sum;
    }

    /** The number of a puff that is so near to a point, counted from 1 in the order in which they left; 0 for none. */
    long near(final State state, final Line point, final double withinM) {
        for (int back = 0; state.flag(alive) && back < COUNT; back++) {
            final int puff = Math.floorMod((int) state.whole(next) - 1 - back, COUNT);
            if (isAlive(state, puff)
                    && point.distanceM2(state.real(xM + puff), state.real(yM + puff)) <= withinM * withinM) {
                return state.whole(made) - back;
            }
        }
        return 0;
    }

    private boolean isAlive(final State state, final int puff) {
        return state.nowNs() - state.whole(bornNs + puff) < LIVE_NS;
    }
}
