package slackwater.simulator.yard;

import java.util.Optional;
import slackwater.model.Input;

/** A light beam: active while a body or fog is in it, so much later as it says of itself. What is shorter it does not tell. */
final class Beam implements Plant {
    private final int input;
    private final Optional<Line> line;
    private final long respondsInNs;
    private final int inFog;
    private final int blocked;
    private final int tellsNs;

    Beam(final int input, final Input of, final Slots slots) {
        this.input = input;
        line = of.sees().ray().map(Line::of);
        respondsInNs = Fact.nanos(Fact.secondsOr(of.facts(), Fact.RESPONDS_IN, 0));
        inFog = slots.takeWholes(1);
        blocked = slots.takeWholes(1);
        tellsNs = slots.takeWholes(1);
    }

    /** Where it runs on the plan. */
    Optional<Line> line() {
        return line;
    }

    void setInFog(final State state, final boolean isInFog) {
        state.setFlag(inFog, isInFog);
    }

    @Override
    public void step(final State state) {
        final boolean isBlocked = state.flag(inFog) || state.isSomebodySeen(input);
        if (isBlocked != state.flag(blocked)) {
            state.setFlag(blocked, isBlocked);
            state.setWhole(tellsNs, state.nowNs() + respondsInNs);
        }
        if (state.nowNs() >= state.whole(tellsNs)) {
            state.setActive(input, isBlocked);
        }
    }

    @Override
    public long wakesNs(final State state) {
        return state.isActive(input) == state.flag(blocked) ? ASLEEP : state.whole(tellsNs);
    }
}
