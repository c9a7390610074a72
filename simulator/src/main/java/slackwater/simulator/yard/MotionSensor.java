package slackwater.simulator.yard;

import java.util.Arrays;
import slackwater.model.Input;
import slackwater.simulator.yard.Draw.Purpose;

/**
 * A passive infrared module: sees people who move, never props, and fires up to three times by itself while it warms up
 * (handbook 5.1 case 5), later as often as it says of itself, and now and then at fog. Its supply comes on when the evening
 * begins.
 */
final class MotionSensor implements Plant {
    private static final double USUAL_PULSE_S = 2;
    private static final int FALSE_PULSES_MAX = 3;

    private final int input;
    private final PirLogic logic;
    private final long[] falseNs;
    private final FalseTriggers falseTriggers;
    private final int highUntilNs;
    private final int nextFalseNs;
    private final int fogFelt;

    MotionSensor(final int input, final Input of, final Wind wind, final long seed, final Slots slots) {
        this.input = input;
        logic = new PirLogic(
                Fact.nanos(Fact.secondsOr(of.facts(), Fact.PULSE, USUAL_PULSE_S)),
                Fact.nanos(Fact.secondsOr(of.facts(), Fact.BLOCK, 0)),
                !of.facts().flag(Fact.ONE_PULSE));
        falseNs = falsePulses(input, seed, of.proving().warmUp().toNanos());
        falseTriggers =
                new FalseTriggers(input, of.facts().count(Fact.FALSE_AN_HOUR).orElse(0L), wind, seed);
        highUntilNs = slots.takeWholes(1);
        nextFalseNs = slots.takeWholes(1);
        fogFelt = slots.takeWholes(1);
    }

    int input() {
        return input;
    }

    void setFogFelt(final State state, final boolean isFelt) {
        state.setFlag(fogFelt, isFelt);
    }

    void begin(final State state) {
        state.setWhole(highUntilNs, PirLogic.QUIET);
        state.setWhole(nextFalseNs, falseTriggers.afterNs(-1));
    }

    /** How often it fires by itself. */
    int falsePulses() {
        return falseNs.length;
    }

    @Override
    public void step(final State state) {
        final long nowNs = state.nowNs();
        final boolean isSeen = state.isLookingNow() && state.isSomebodySeen(input);
        final boolean isFogSeen = nowNs % Fog.LOOK_NS == 0 && state.flag(fogFelt);
        final boolean isFalse = isFalse(state);
        if (isSeen || isFogSeen || isFalse || Arrays.binarySearch(falseNs, nowNs) >= 0) {
            state.setWhole(highUntilNs, logic.afterDetection(state.whole(highUntilNs), nowNs));
        }
        state.setActive(input, logic.isHigh(state.whole(highUntilNs), nowNs));
    }

    @Override
    public long wakesNs(final State state) {
        long wakesNs = state.whole(nextFalseNs);
        if (state.isActive(input)) {
            wakesNs = Math.min(wakesNs, state.whole(highUntilNs));
        }
        for (final long pulseNs : falseNs) {
            if (pulseNs > state.nowNs()) {
                wakesNs = Math.min(wakesNs, pulseNs);
            }
        }
        return wakesNs;
    }

    private boolean isFalse(final State state) {
        if (state.nowNs() < state.whole(nextFalseNs)) {
            return false;
        }
        state.setWhole(nextFalseNs, falseTriggers.afterNs(state.nowNs()));
        return falseTriggers.isAt(state.nowNs());
    }

    private static long[] falsePulses(final int input, final long seed, final long warmUpNs) {
        if (warmUpNs == 0) {
            return new long[0];
        }
        final int count = (int) (Draw.unit(seed, Purpose.FALSE_PULSES, input, 0) * (FALSE_PULSES_MAX + 1));
        final long[] pulses = new long[count];
        for (int i = 0; i < count; i++) {
            final double share = Draw.unit(seed, Purpose.FALSE_PULSES, input, i + 1);
            pulses[i] = Math.floorDiv((long) (share * warmUpNs), State.GRID_NS) * State.GRID_NS;
        }
        Arrays.sort(pulses);
        return pulses;
    }
}
