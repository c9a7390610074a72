package slackwater.simulator.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import slackwater.model.Circuit;
import slackwater.model.Supply;

/**
 * The current in every circuit and power supply. A supply that is asked for more than it gives folds: all its loads lose
 * power for a second, then it tries again. A breaker that trips takes everything behind it away until somebody resets it. The last of
 * the plants, so that it sees what all others draw; they see what it took away at the next grid point. Controllers have a
 * supply of their own.
 */
final class Mains implements Plant {
    /** How long a supply that folded stays off (common practice, no source). */
    static final long HICCUP_NS = 1_000_000_000L;

    /** Of a supply that tells none (common practice, no source). */
    static final double USUAL_EFFICIENCY = 0.85;

    private static final double ROUNDING_A = 1e-9;

    private final Sources sources;
    private final Feeds feeds;
    private final Draws draws;
    private final List<Breaker> breakers = new ArrayList<>();
    private final List<int[]> loadsOfSupply = new ArrayList<>();
    private final List<int[]> loadsOfCircuit = new ArrayList<>();
    private final List<int[]> suppliesOfCircuit = new ArrayList<>();
    private final double[] inPerOut;
    private final int supplyA;
    private final int unfoldsNs;
    private final int changed;

    Mains(final Sources sources, final Feeds feeds, final Draws draws, final Slots slots) {
        this.sources = sources;
        this.feeds = feeds;
        this.draws = draws;
        inPerOut = new double[sources.supplies().size()];
        for (int i = 0; i < inPerOut.length; i++) {
            final Supply supply = sources.supplies().get(i);
            inPerOut[i] = supply.volts() / supply.efficiency().orElse(USUAL_EFFICIENCY);
            loadsOfSupply.add(sources.loadsOfSupply(i));
        }
        for (int i = 0; i < sources.circuits().size(); i++) {
            breakers.add(new Breaker(sources.circuits().get(i), slots));
            loadsOfCircuit.add(sources.loadsOfCircuit(i));
            suppliesOfCircuit.add(sources.suppliesOfCircuit(i));
        }
        supplyA = slots.takeReals(inPerOut.length);
        unfoldsNs = slots.takeWholes(inPerOut.length);
        changed = slots.takeWholes(1);
    }

    void begin(final State state) {
        for (int i = 0; i < inPerOut.length; i++) {
            state.setWhole(unfoldsNs + i, ASLEEP);
        }
        breakers.forEach(breaker -> breaker.begin(state));
    }

    /** In a circuit or out of a supply, amperes at its own voltage; empty where the rig has none of that name. */
    OptionalInt circuit(final String name) {
        return sources.circuit(name);
    }

    OptionalInt supply(final String name) {
        return sources.supply(name);
    }

    double circuitA(final State state, final int circuit) {
        return breakers.get(circuit).amps(state);
    }

    double supplyA(final State state, final int supply) {
        return state.real(supplyA + supply);
    }

    /** Of a breaker's bimetal: 1 is that of the rated current for ever. */
    double heat(final State state, final int circuit) {
        return breakers.get(circuit).heat(state);
    }

    boolean isTripped(final State state, final int circuit) {
        return sources.isTripped(state, circuit);
    }

    void leak(final State state, final int circuit, final double amps) {
        breakers.get(circuit).leak(state, amps);
    }

    /** Somebody closes a breaker again. */
    void reset(final State state, final int circuit) {
        sources.setTripped(state, circuit, false);
        breakers.get(circuit).reset(state);
        feeds.feed(state);
    }

    @Override
    public void step(final State state) {
        final boolean isUnfolding = unfold(state);
        draws.look(state);
        final boolean isFolding = !isUnfolding && loadSupplies(state);
        final boolean isTripping = loadCircuits(state);
        final boolean isChanged = isUnfolding || isFolding || isTripping;
        state.setFlag(changed, isChanged);
        if (isChanged) {
            feeds.feed(state);
        }
    }

    @Override
    public long wakesNs(final State state) {
        if (state.flag(changed)) {
            return state.nowNs();
        }
        long wakesNs = draws.wakesNs(state);
        for (int i = 0; i < inPerOut.length; i++) {
            wakesNs = Math.min(wakesNs, state.whole(unfoldsNs + i));
        }
        for (int i = 0; i < breakers.size(); i++) {
            wakesNs = Math.min(wakesNs, breakers.get(i).wakesNs(state));
        }
        return wakesNs;
    }

    private boolean unfold(final State state) {
        boolean isAny = false;
        for (int i = 0; i < inPerOut.length; i++) {
            if (state.nowNs() >= state.whole(unfoldsNs + i)) {
                state.setWhole(unfoldsNs + i, ASLEEP);
                sources.setFolded(state, i, false);
                isAny = true;
            }
        }
        return isAny;
    }

    private boolean loadSupplies(final State state) {
        boolean isAny = false;
        for (int i = 0; i < inPerOut.length; i++) {
            double sumA = 0;
            for (final int load : loadsOfSupply.get(i)) {
                sumA += draws.amps(state, load);
            }
            final boolean isFolding =
                    sumA > sources.supplies().get(i).givesA() + ROUNDING_A && !sources.isFolded(state, i);
            if (isFolding) {
                sources.setFolded(state, i, true);
                state.setWhole(unfoldsNs + i, state.nowNs() + HICCUP_NS);
                isAny = true;
            }
            state.setReal(supplyA + i, isFolding ? 0 : sumA);
        }
        return isAny;
    }

    private boolean loadCircuits(final State state) {
        boolean isAny = false;
        for (int i = 0; i < breakers.size(); i++) {
            final Breaker breaker = breakers.get(i);
            if (!sources.isTripped(state, i) && breaker.carry(state, sumA(state, i))) {
                sources.setTripped(state, i, true);
                breaker.open(state);
                isAny = true;
            }
        }
        return isAny;
    }

    private double sumA(final State state, final int circuit) {
        final Circuit of = sources.circuits().get(circuit);
        double sumA = of.othersA();
        for (final int load : loadsOfCircuit.get(circuit)) {
            sumA += draws.amps(state, load);
        }
        for (final int supply : suppliesOfCircuit.get(circuit)) {
            sumA += state.real(supplyA + supply) * inPerOut[supply] / of.volts();
        }
        return sumA;
    }
}
