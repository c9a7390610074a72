package slackwater.simulator.yard;

import java.util.OptionalDouble;
import slackwater.model.Circuit;
import slackwater.model.engineering.BreakerCurve;
import slackwater.model.engineering.GroundFault;

/**
 * The breaker of one circuit: a bimetal that remembers heat, a magnet, and ground-fault protection where there is any. It is of
 * type B, a household's usual one (common practice, no source). From three rated currents its magnet trips after a tenth of a
 * second, from five at once; shorter inrushes between the two pass.
 */
final class Breaker {
    static final BreakerCurve CURVE = BreakerCurve.B;

    /** A residual-current device that is no class A interrupter trips within this (IEC 61008-1, from memory). */
    private static final double RESIDUAL_TRIPS_IN_S = 0.3;

    /** Sums of decimal fractions miss a limit by rounding; this is far below any current that matters. */
    private static final double ROUNDING = 1e-9;

    private final Circuit circuit;
    private final int heat;
    private final int amps;
    private final int leakA;
    private final int sinceNs;
    private final int tripsNs;
    private final int leakTripsNs;

    Breaker(final Circuit circuit, final Slots slots) {
        this.circuit = circuit;
        heat = slots.takeReals(1);
        amps = slots.takeReals(1);
        leakA = slots.takeReals(1);
        sinceNs = slots.takeWholes(1);
        tripsNs = slots.takeWholes(1);
        leakTripsNs = slots.takeWholes(1);
    }

    void begin(final State state) {
        state.setWhole(tripsNs, Plant.ASLEEP);
        state.setWhole(leakTripsNs, Plant.ASLEEP);
    }

    double amps(final State state) {
        return state.real(amps);
    }

    /** Of its bimetal: 1 is that of the rated current for ever. */
    double heat(final State state) {
        return BreakerCurve.heatAfter(state.real(heat), multiple(state), state.secondsSince(state.whole(sinceNs)));
    }

    /** Something leaks to ground: an injected fault; 0 ends it. */
    void leak(final State state, final double nextLeakA) {
        final boolean isProtected = circuit.groundFaultA().isPresent()
                && nextLeakA >= circuit.groundFaultA().getAsDouble() - ROUNDING;
        state.setReal(leakA, nextLeakA);
        state.setWhole(leakTripsNs, isProtected ? state.nowNs() + Fact.nanos(leakTripsInS(nextLeakA)) : Plant.ASLEEP);
    }

    /** Closes it again; what leaks begins to count anew. */
    void reset(final State state) {
        leak(state, state.real(leakA));
    }

    /** Carries so much from now on; returns whether it trips. */
    boolean carry(final State state, final double nextA) {
        if (nextA != state.real(amps)) {
            state.setReal(heat, heat(state));
            state.setReal(amps, nextA);
            state.setWhole(sinceNs, state.nowNs());
            state.setWhole(tripsNs, tripsNs(state));
        }
        final boolean isAtOnce = multiple(state) >= CURVE.tripsAtOnceFrom() - ROUNDING;
        return isAtOnce || state.nowNs() >= state.whole(tripsNs) || state.nowNs() >= state.whole(leakTripsNs);
    }

    /** It has opened: nothing flows, and what leaked no longer does. */
    void open(final State state) {
        carry(state, 0);
        state.setWhole(tripsNs, Plant.ASLEEP);
        state.setWhole(leakTripsNs, Plant.ASLEEP);
    }

    long wakesNs(final State state) {
        return Math.min(state.whole(tripsNs), state.whole(leakTripsNs));
    }

    private long tripsNs(final State state) {
        final OptionalDouble inS = CURVE.tripsAfterS(multiple(state), state.real(heat));
        return inS.isEmpty() ? Plant.ASLEEP : state.nowNs() + Fact.nanos(inS.getAsDouble());
    }

    private double leakTripsInS(final double leak) {
        return circuit.groundFaultA().orElse(0) <= GroundFault.TRIPS_FROM_A + ROUNDING
                ? GroundFault.longestTripS(leak).orElse(RESIDUAL_TRIPS_IN_S)
                : RESIDUAL_TRIPS_IN_S;
    }

    private double multiple(final State state) {
        return state.real(amps) / circuit.breakerA();
    }
}
