package slackwater.simulator.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slackwater.model.Facts;
import slackwater.model.engineering.AirReference;
import slackwater.model.engineering.FlowPath;
import slackwater.model.engineering.FreeAir;

/**
 * The line behind one air-supply valve, normally exhausting (S15), with all that hangs on it. It fills through regulator and
 * valve, softly up to half its pressure, and empties through the valve's exhaust; without such a valve it always holds air.
 * While anything moves it is stepped by a quarter of a millisecond; the tank feels the whole grid step at its end.
 */
final class AirSection implements Plant {
    /** Volume of hoses and manifold, regulator and exhaust where nobody says them (common practice, no source). */
    private static final double USUAL_LINE_M3 = 0.3e-3;

    private static final double USUAL_NOMINAL_M3_PER_S = 0.6 / 60;

    /** A soft start passes a tenth until the line is half full (common practice, no source). */
    private static final double SOFT_SHARE = 0.1;

    private static final double SOFT_UNTIL_SHARE = 0.5;

    /** Below this part of the working pressure a prop of which no size is told is not lifted (common practice, no source). */
    private static final double ENOUGH_SHARE = 0.4;

    /** So near to its rest, it is taken to be there. */
    static final double SETTLED_PA = 200;

    private static final int SUB_STEPS = 40;
    private static final long SUB_NS = State.GRID_NS / SUB_STEPS;
    private static final double SUB_S = SUB_NS / State.NS_PER_S;
    private static final double B = FlowPath.USUAL_CRITICAL_RATIO;

    private final OptionalInt supply;
    private final double workingPa;
    private final Optional<Tank> tank;
    private final double lineM3;
    private final double inlet;
    private final double outlet;
    private final List<AirUser> users = new ArrayList<>();
    private final int paAbs;
    private final int ventedM3;
    private final int full;

    /**
     * A line.
     *
     * @param supply the output that feeds it; empty for one that always has air
     * @param facts what the air supply's own keys say
     * @param nominalM3PerS nominal flow of the regulator and the pipe up to here
     */
    AirSection(
            final OptionalInt supply,
            final Facts facts,
            final double workingPa,
            final OptionalDouble nominalM3PerS,
            final Optional<Tank> tank,
            final Slots slots) {
        this.supply = supply;
        this.workingPa = workingPa;
        this.tank = tank;
        lineM3 = facts.siOr(Fact.LINE, USUAL_LINE_M3);
        final FlowPath regulator = path(nominalM3PerS.orElse(USUAL_NOMINAL_M3_PER_S));
        final OptionalDouble valve = facts.si(Fact.FLOW);
        inlet = (valve.isPresent() ? regulator.inSeries(path(valve.getAsDouble())) : regulator).conductanceM3PerSPa();
        outlet = path(facts.siOr(Fact.EXHAUST, USUAL_NOMINAL_M3_PER_S)).conductanceM3PerSPa();
        paAbs = slots.takeReals(1);
        ventedM3 = slots.takeReals(1);
        full = slots.takeWholes(1);
    }

    private static FlowPath path(final double nominalM3PerS) {
        return FlowPath.fromNominalFlow(nominalM3PerS, B);
    }

    /** Hangs something on it, while the yard is being built. */
    void feeds(final AirUser user) {
        users.add(user);
    }

    /** As it stands before the evening: empty behind a valve, full without one. */
    void begin(final State state) {
        state.setReal(paAbs, isOpen(state) ? sourcePaAbs(state) : FreeAir.ATMOSPHERE_PA);
        state.setFlag(full, isOpen(state));
    }

    double workingPa() {
        return workingPa;
    }

    /** What a trial of a prop on this line needs to know. */
    Bench bench() {
        return new Bench(inlet, lineM3, FreeAir.absolutePa(workingPa));
    }

    /** A line fed from a full tank, for setting a throttle. */
    record Bench(double inlet, double lineM3, double sourcePaAbs) {
        /** The line after a small step in which so much was taken from it. */
        double after(final double linePaAbs, final double takenM3, final double stepS) {
            final double wanted = flow(inlet, sourcePaAbs, linePaAbs) * stepS;
            final double most = (sourcePaAbs - linePaAbs) * lineM3 / Tank.ANR_PA;
            return linePaAbs + (Math.max(0, Math.min(wanted, most)) - takenM3) * Tank.ANR_PA / lineM3;
        }
    }

    /** Gauge pressure, pascals. */
    double pressurePa(final State state) {
        return Math.max(0, FreeAir.gaugePa(state.real(paAbs)));
    }

    boolean hasEnough(final State state) {
        return pressurePa(state) >= ENOUGH_SHARE * workingPa;
    }

    /** Free air for something of which no size is told. */
    void draw(final State state, final double freeAirM3) {
        if (tank.isPresent()) {
            final double givenM3 = tank.get().draw(state, AirReference.FREE_AIR.toM3(freeAirM3, AirReference.ANR));
            state.setReal(ventedM3, state.real(ventedM3) + givenM3);
        }
    }

    /** Air in line and users, m3 ANR. */
    double holdsM3(final State state) {
        double sumM3 = state.real(paAbs) * lineM3 / Tank.ANR_PA;
        for (final AirUser user : users) {
            sumM3 += user.holdsM3(state);
        }
        return sumM3;
    }

    /** Air that line and users have let out since the evening began, m3 ANR. */
    double ventedM3(final State state) {
        double sumM3 = state.real(ventedM3);
        for (final AirUser user : users) {
            sumM3 += user.ventedM3(state);
        }
        return sumM3;
    }

    @Override
    public void step(final State state) {
        final boolean isOpen = isOpen(state);
        if (!isOpen) {
            state.setFlag(full, false);
        }
        if (isAtRest(state, state.nowNs())) {
            return;
        }
        final double sourcePa = sourcePaAbs(state);
        double fromTankM3 = 0;
        double outM3 = 0;
        double linePa = state.real(paAbs);
        for (int sub = 1; sub <= SUB_STEPS; sub++) {
            final long atNs = state.nowNs() - State.GRID_NS + sub * SUB_NS;
            final double comesM3 = isOpen ? comesM3(state, sourcePa, linePa) : 0;
            final double goesM3 = isOpen ? 0 : goesM3(linePa);
            double takenM3 = 0;
            for (final AirUser user : users) {
                takenM3 += user.advance(state, atNs, linePa, SUB_S);
            }
            linePa += (comesM3 - goesM3 - takenM3) * Tank.ANR_PA / lineM3;
            fromTankM3 += comesM3;
            outM3 += goesM3;
        }
        final double targetPa = isOpen ? Math.max(sourcePa, linePa) : FreeAir.ATMOSPHERE_PA;
        if (Math.abs(targetPa - linePa) <= SETTLED_PA && areNear(state, targetPa)) {
            double takenM3 = 0;
            for (final AirUser user : users) {
                takenM3 += user.settle(state, state.nowNs(), targetPa);
            }
            final double moreM3 = (targetPa - linePa) * lineM3 / Tank.ANR_PA + takenM3;
            linePa = targetPa;
            fromTankM3 += isOpen ? moreM3 : 0;
            outM3 -= isOpen ? 0 : moreM3;
        }
        state.setReal(paAbs, linePa);
        state.setReal(ventedM3, state.real(ventedM3) + outM3);
        state.setFlag(full, isOpen && (state.flag(full) || isHalfFull(sourcePa, linePa)));
        take(state, fromTankM3);
    }

    @Override
    public long wakesNs(final State state) {
        return isAtRest(state, state.nowNs()) && !isFollowing(state) ? ASLEEP : state.nowNs();
    }

    /** While the tank is below the regulator, the line follows it. */
    private boolean isFollowing(final State state) {
        return isOpen(state)
                && tank.isPresent()
                && tank.get().pressurePa(state) < workingPa
                && tank.get().isChanging(state);
    }

    private boolean isAtRest(final State state, final long atNs) {
        final double linePa = state.real(paAbs);
        final boolean isStill = isOpen(state) ? linePa >= sourcePaAbs(state) : linePa == FreeAir.ATMOSPHERE_PA;
        return isStill && areSettled(state, atNs, linePa);
    }

    private boolean areSettled(final State state, final long atNs, final double linePa) {
        for (final AirUser user : users) {
            if (!user.isSettled(state, atNs, linePa)) {
                return false;
            }
        }
        return true;
    }

    /** Whether everything on it would be settled by the last small correction. */
    private boolean areNear(final State state, final double targetPa) {
        for (final AirUser user : users) {
            if (!user.isNear(state, state.nowNs(), targetPa)) {
                return false;
            }
        }
        return true;
    }

    private double comesM3(final State state, final double sourcePa, final double linePa) {
        if (linePa >= sourcePa) {
            return 0; // a check valve: what the line holds does not flow back
        }
        final boolean isSoft = supply.isPresent() && !state.flag(full) && !isHalfFull(sourcePa, linePa);
        final double wantedM3 = flow(isSoft ? SOFT_SHARE * inlet : inlet, sourcePa, linePa) * SUB_S;
        return Math.min(wantedM3, (sourcePa - linePa) * lineM3 / Tank.ANR_PA);
    }

    private double goesM3(final double linePa) {
        if (linePa <= FreeAir.ATMOSPHERE_PA) {
            return 0;
        }
        return Math.min(
                flow(outlet, linePa, FreeAir.ATMOSPHERE_PA) * SUB_S,
                (linePa - FreeAir.ATMOSPHERE_PA) * lineM3 / Tank.ANR_PA);
    }

    private static boolean isHalfFull(final double sourcePa, final double linePa) {
        return linePa - FreeAir.ATMOSPHERE_PA >= SOFT_UNTIL_SHARE * (sourcePa - FreeAir.ATMOSPHERE_PA);
    }

    /** m3 ANR a second along a path of usual critical ratio at 20 degC. */
    static double flow(final double conductance, final double fromPaAbs, final double toPaAbs) {
        return FlowPath.massFlow(conductance, B, fromPaAbs, toPaAbs, 1) / FreeAir.REFERENCE_KG_PER_M3;
    }

    private void take(final State state, final double anrM3) {
        if (tank.isPresent() && anrM3 != 0) {
            tank.get().draw(state, anrM3);
        }
    }

    private boolean isOpen(final State state) {
        return supply.isEmpty() || state.isOn(supply.getAsInt());
    }

    private double sourcePaAbs(final State state) {
        final double gaugePa = tank.isPresent() ? Math.min(workingPa, tank.get().pressurePa(state)) : workingPa;
        return FreeAir.absolutePa(gaugePa);
    }
}
