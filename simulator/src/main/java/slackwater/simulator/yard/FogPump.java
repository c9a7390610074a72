package slackwater.simulator.yard;

import slackwater.model.Output;
import slackwater.model.engineering.FogFluid;

/** The pump of a fog maker with its bottle: while it runs it takes fluid, and on an empty bottle it runs dry. */
final class FogPump implements Plant {
    /** Of the mixes in the trade at 20 degC (common practice, no source). */
    static final double FLUID_KG_PER_M3 = 1_030;

    /** A maker of 400 W: 5 to 15 g/min (handbook 2.4 case 7; common practice, no source). */
    private static final double USUAL_FLOW_KG_PER_S = 12e-3 / 60;

    private final int output;
    private final double flowKgPerS;
    private final FogFluid fluid;
    private final double heatJPerKg;
    private final Vessel bottle;

    FogPump(final int output, final Output of, final double fromC, final Slots slots) {
        this.output = output;
        flowKgPerS = of.facts().siOr(Fact.FLOW, USUAL_FLOW_KG_PER_S);
        fluid = new FogFluid(of.facts().siOr(Fact.GLYCOL, FogFluid.USUAL.glycolShare()));
        heatJPerKg = fluid.heatJPerKg(fromC);
        final double holdsKg = of.facts().siOr(Fact.HOLDS, Double.POSITIVE_INFINITY) * FLUID_KG_PER_M3;
        bottle = new Vessel(holdsKg, flowKgPerS, slots);
    }

    void fill(final State state) {
        bottle.fill(state);
    }

    boolean hasFluid(final State state) {
        return bottle.isFilled(state);
    }

    boolean isFlowing(final State state) {
        return bottle.isFeeding(state);
    }

    double flowKgPerS() {
        return flowKgPerS;
    }

    FogFluid fluid() {
        return fluid;
    }

    /** What turning its flow into vapour takes, watts. */
    double takesW() {
        return flowKgPerS * heatJPerKg;
    }

    /** Fluid in its bottle; infinite where nobody told what it holds. */
    double leftKg(final State state) {
        return bottle.left(state);
    }

    double dryS(final State state) {
        return bottle.dryS(state);
    }

    @Override
    public void step(final State state) {
        bottle.step(state, state.isOn(output));
    }

    @Override
    public long wakesNs(final State state) {
        return bottle.wakesNs(state);
    }
}
