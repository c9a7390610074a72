package slackwater.simulator.yard;

import java.util.List;
import java.util.Optional;
import slackwater.model.Input;
import slackwater.model.Pull;
import slackwater.model.Rig;
import slackwater.model.kind.InputFamily;

/** The wires of the inputs: what is true behind them, hands in front of them, and faults laid over them. */
final class Lines {
    private static final long HAND_INACTIVE = 1;
    private static final long HAND_ACTIVE = 2;
    private static final long STUCK_HIGH = 1;
    private static final long STUCK_LOW = 2;
    private static final long OPEN = 3;
    private static final long CHATTER = 4;

    private final List<Input> inputs;

    Lines(final Rig rig) {
        inputs = rig.inputs();
    }

    void hold(final State state, final int input, final boolean isActive) {
        state.setHand(input, isActive ? HAND_ACTIVE : HAND_INACTIVE);
    }

    void overlay(final State state, final int input, final Optional<InputOverlay> overlay) {
        long halfNs = 0;
        if (overlay.isPresent() && overlay.get() instanceof InputOverlay.Chatter chatter) {
            halfNs = State.ceilGridNs((chatter.periodNs() + 1) / 2);
        }
        state.setInputOverlay(input, overlay.map(Lines::code).orElse(0L), halfNs);
    }

    boolean isHigh(final State state, final int input) {
        final Input wired = inputs.get(input);
        final long overlay = state.inputOverlay(input);
        if (overlay == STUCK_HIGH || overlay == STUCK_LOW) {
            return overlay == STUCK_HIGH;
        }
        if (overlay == OPEN) {
            return wired.pull() == Pull.UP;
        }
        if (overlay == CHATTER) {
            return state.nowNs() / state.chatterHalfNs(input) % 2 == 0;
        }
        return isActive(state, input) == wired.activeLevel().isHigh();
    }

    boolean isActive(final State state, final int input) {
        if (state.hand(input) != 0) {
            return state.hand(input) == HAND_ACTIVE;
        }
        return inputs.get(input).family() == InputFamily.STOP_LOOP ? !state.isStopLoopOpen() : state.isActive(input);
    }

    long chatterWakesNs(final State state) {
        long wakesNs = Plant.ASLEEP;
        for (int i = 0; i < inputs.size(); i++) {
            if (state.inputOverlay(i) == CHATTER) {
                final long halfNs = state.chatterHalfNs(i);
                wakesNs = Math.min(wakesNs, (state.nowNs() / halfNs + 1) * halfNs);
            }
        }
        return wakesNs;
    }

    private static long code(final InputOverlay overlay) {
        if (overlay instanceof InputOverlay.StuckHigh) {
            return STUCK_HIGH;
        }
        if (overlay instanceof InputOverlay.StuckLow) {
            return STUCK_LOW;
        }
        return overlay instanceof InputOverlay.Open ? OPEN : CHATTER;
    }
}
