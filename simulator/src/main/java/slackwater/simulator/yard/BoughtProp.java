package slackwater.simulator.yard;

import slackwater.model.Output;

/** A bought prop on a contact: a pulse starts it, it runs its time, and while the contact stays closed it runs again. */
final class BoughtProp implements Prop {
    private static final double USUAL_RUN_S = 5;

    private final int output;
    private final long runsForNs;
    private final int untilNs;
    private final int running;

    BoughtProp(final int output, final Output of, final Slots slots) {
        this.output = output;
        runsForNs = Fact.nanos(Fact.secondsOr(of.facts(), Fact.RUN_TIME, USUAL_RUN_S));
        untilNs = slots.takeWholes(1);
        running = slots.takeWholes(1);
    }

    @Override
    public void step(final State state) {
        if (state.nowNs() >= state.whole(untilNs)) {
            final boolean isOn = state.isOn(output);
            state.setFlag(running, isOn);
            if (isOn) {
                state.setWhole(untilNs, state.nowNs() + runsForNs);
            }
        }
    }

    @Override
    public long wakesNs(final State state) {
        return isMoving(state) ? state.whole(untilNs) : ASLEEP;
    }

    @Override
    public boolean isMoving(final State state) {
        return state.flag(running);
    }

    /** Not told: it is the maker's matter, and people are kept out of its reach instead. */
    @Override
    public double energyJ(final State state) {
        return 0;
    }
}
