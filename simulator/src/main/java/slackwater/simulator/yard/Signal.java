package slackwater.simulator.yard;

import java.util.function.Predicate;

/** An input that shows what a plant says of itself. */
record Signal(int input, Predicate<State> says) implements Plant {
    @Override
    public void step(final State state) {
        state.setActive(input, says.test(state));
    }

    @Override
    public long wakesNs(final State state) {
        return ASLEEP;
    }
}
