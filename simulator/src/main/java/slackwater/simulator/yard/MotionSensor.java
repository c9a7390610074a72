package slackwater.simulator.yard;

import java.util.Arrays;
import slackwater.model.Input;
import slackwater.simulator.yard.Draw.Purpose;

/**
 * A passive infrared module: sees people who move, never props, and fires up to three times by itself while it warms up
 * (handbook 5.1 case 5). Its supply comes on when the evening begins.
 */
final class MotionSensor implements Plant {
    private static final double USUAL_PULSE_S = 2;
    private static final int FALSE_PULSES_MAX = 3;

    private final int input;
    private final PirLogic logic;
    private final long[] falseNs;
    private final int highUntilNs;

    MotionSensor(final int input, final Input of, final long seed, final Slots slots) {
        this.input = input;
        logic = new PirLogic(
                Fact.nanos(Fact.secondsOr(of.facts(), Fact.PULSE, USUAL_PULSE_S)),
                Fact.nanos(Fact.secondsOr(of.facts(), Fact.BLOCK, 0)),
                !of.facts().flag(Fact.ONE_PULSE));
        falseNs = falsePulses(input, seed, of.proving().warmUp().toNanos());
        highUntilNs = slots.takeWholes(1);
    }

    void begin(final State state) {
        state.setWhole(highUntilNs, PirLogic.QUIET);
    }

    /** How often it fires by itself. */
    int falsePulses() {
        return falseNs.length;
    }

    @Override
    public void step(final State state) {
        final long nowNs = state.nowNs();
        final boolean isSeen = state.isLookingNow() && state.isSomebodySeen(input);
        if (isSeen || Arrays.binarySearch(falseNs, nowNs) >= 0) {
            state.setWhole(highUntilNs, logic.afterDetection(state.whole(highUntilNs), nowNs));
        }
        state.setActive(input, logic.isHigh(state.whole(highUntilNs), nowNs));
    }

    @Override
    public long wakesNs(final State state) {
        long wakesNs = state.isActive(input) ? state.whole(highUntilNs) : ASLEEP;
        for (final long pulseNs : falseNs) {
            if (pulseNs > state.nowNs()) {
                wakesNs = Math.min(wakesNs, pulseNs);
            }
        }
        return wakesNs;
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
