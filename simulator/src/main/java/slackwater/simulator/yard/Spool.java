package slackwater.simulator.yard;

import slackwater.model.Facts;
import slackwater.model.engineering.ValveTimes;

/** The moving part of a valve: follows its coil some milliseconds later. A shorter pulse does not move it. */
final class Spool implements Plant {
    private final int output;
    private final long opensNs;
    private final long closesNs;
    private final int coil;
    private final int sinceNs;
    private final int open;

    Spool(final int output, final Facts facts, final Slots slots) {
        this.output = output;
        opensNs = Fact.nanos(Fact.secondsOr(facts, Fact.OPENS_IN, ValveTimes.PILOT_ON_S.middle()));
        closesNs = Fact.nanos(Fact.secondsOr(facts, Fact.CLOSES_IN, ValveTimes.PILOT_OFF_S.middle()));
        coil = slots.takeWholes(1);
        sinceNs = slots.takeWholes(1);
        open = slots.takeWholes(1);
    }

    /** Whether it lets air through at a moment since the last step of its coil. */
    boolean isOpenAt(final State state, final long atNs) {
        return isOver(state, atNs) ? state.flag(coil) : state.flag(open);
    }

    /** Whether it has arrived where its coil wants it. */
    boolean isStill(final State state, final long atNs) {
        return isOver(state, atNs);
    }

    /** Notes what the coil does. The power seen at a grid point was there since the one before. */
    @Override
    public void step(final State state) {
        final boolean isOn = state.isOn(output);
        if (isOn != state.flag(coil)) {
            final long changedNs = state.nowNs() - State.GRID_NS;
            state.setFlag(open, isOpenAt(state, changedNs));
            state.setFlag(coil, isOn);
            state.setWhole(sinceNs, changedNs);
        }
    }

    @Override
    public long wakesNs(final State state) {
        return ASLEEP;
    }

    private boolean isOver(final State state, final long atNs) {
        return atNs - state.whole(sinceNs) >= (state.flag(coil) ? opensNs : closesNs);
    }
}
