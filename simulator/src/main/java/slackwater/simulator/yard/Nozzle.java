package slackwater.simulator.yard;

import slackwater.model.Facts;
import slackwater.model.Output;
import slackwater.model.engineering.FlowPath;
import slackwater.model.engineering.FreeAir;

/** A valve that blows into the open through a hole, for as long as it is open. */
final class Nozzle implements Plant, AirUser {
    /** A rounded hole passes this share of the ideal flow (common practice, no source). */
    private static final double CD = 0.9;

    private static final double ATM = FreeAir.ATMOSPHERE_PA;

    private final Spool spool;
    private final FlowPath path;
    private final double regulatedPaAbs;
    private final int ventedM3;

    Nozzle(final int output, final Output of, final AirSection line, final Slots slots) {
        final Facts facts = of.facts();
        spool = new Spool(output, facts, slots);
        final double b = facts.siOr(Fact.CRITICAL_RATIO, FlowPath.USUAL_CRITICAL_RATIO);
        final FlowPath hole = FlowPath.ofHole(facts.siOr(Fact.NOZZLE, 0.001), CD);
        path = facts.si(Fact.FLOW).isPresent()
                ? FlowPath.fromNominalFlow(facts.siOr(Fact.FLOW, 1), b).inSeries(hole)
                : hole;
        regulatedPaAbs = FreeAir.absolutePa(facts.siOr(Fact.PRESSURE, line.workingPa()));
        ventedM3 = slots.takeReals(1);
    }

    /** Whether the rig tells the hole of a valve. */
    static boolean isToldBy(final Facts facts) {
        return facts.si(Fact.NOZZLE).isPresent();
    }

    @Override
    public void step(final State state) {
        spool.step(state);
    }

    @Override
    public long wakesNs(final State state) {
        return ASLEEP; // the line steps it while it blows
    }

    @Override
    public double advance(final State state, final long atNs, final double linePaAbs, final double stepS) {
        if (!spool.isOpenAt(state, atNs) || linePaAbs <= ATM) {
            return 0;
        }
        final double fromPa = Math.min(linePaAbs, regulatedPaAbs);
        final double takenM3 = FlowPath.massFlow(path.conductanceM3PerSPa(), path.criticalRatio(), fromPa, ATM, 1)
                / FreeAir.REFERENCE_KG_PER_M3
                * stepS;
        state.setReal(ventedM3, state.real(ventedM3) + takenM3);
        return takenM3;
    }

    @Override
    public boolean isNear(final State state, final long atNs, final double linePaAbs) {
        return isSettled(state, atNs, linePaAbs);
    }

    @Override
    public boolean isSettled(final State state, final long atNs, final double linePaAbs) {
        return spool.isStill(state, atNs) && (!spool.isOpenAt(state, atNs) || linePaAbs <= ATM);
    }

    @Override
    public double settle(final State state, final long atNs, final double linePaAbs) {
        return 0;
    }

    @Override
    public double holdsM3(final State state) {
        return 0;
    }

    @Override
    public double ventedM3(final State state) {
        return state.real(ventedM3);
    }
}
