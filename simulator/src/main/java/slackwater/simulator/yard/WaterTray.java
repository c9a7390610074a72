package slackwater.simulator.yard;

import slackwater.model.Output;

/** The tray under ultrasonic discs: used up while they run, filled again by hand. */
final class WaterTray implements Plant {
    /** The level switch falls below this and comes back a little above it (common practice, no source). */
    static final double LOW_SHARE = 0.10;

    static final double REFILLED_SHARE = 0.12;

    /** One disc's (handbook 2.5 case 8: 250..450 cm3/h). */
    private static final double DISC_M3_PER_S = 350e-6 / 3600;

    private static final double USUAL_HOLDS_M3 = 1.5e-3;
    private static final double WATER_KG_PER_M3 = 1_000;

    private final int output;
    private final double usesM3PerS;
    private final Vessel water;
    private final int enough;

    WaterTray(final int output, final Output of, final Slots slots) {
        this.output = output;
        final long discs = of.facts().count(Fact.DISCS).orElse(1L);
        usesM3PerS = of.facts().siOr(Fact.USES, discs * DISC_M3_PER_S);
        water = new Vessel(of.facts().siOr(Fact.HOLDS, USUAL_HOLDS_M3), usesM3PerS, slots);
        enough = slots.takeWholes(1);
    }

    void fill(final State state) {
        water.fill(state);
    }

    double waterM3(final State state) {
        return water.left(state);
    }

    double dryS(final State state) {
        return water.dryS(state);
    }

    boolean hasWater(final State state) {
        return water.isFilled(state);
    }

    boolean isEnough(final State state) {
        return state.flag(enough);
    }

    /** Whether mist leaves it. */
    boolean isMisting(final State state) {
        return water.isFeeding(state);
    }

    /** Water that leaves it as mist, kg/s. */
    double mistKgPerS() {
        return usesM3PerS * WATER_KG_PER_M3;
    }

    @Override
    public void step(final State state) {
        final double least = water.holds() * (isEnough(state) ? LOW_SHARE : REFILLED_SHARE);
        state.setFlag(enough, water.left(state) >= least);
        water.step(state, state.isOn(output));
    }

    @Override
    public long wakesNs(final State state) {
        return isEnough(state) ? water.reachesNs(state, water.holds() * LOW_SHARE) : water.wakesNs(state);
    }
}
