package slackwater.simulator.yard;

import slackwater.simulator.yard.Draw.Purpose;

/**
 * Rain as a function of the seed and of time: some hours have a shower. All sensors of a yard feel the same one. How often
 * it rains is a guess (common practice, no source).
 */
final class RainSensor implements Plant {
    private static final long HOUR_NS = 3_600_000_000_000L;
    private static final long MINUTE_NS = 60_000_000_000L;
    private static final double WET_HOURS_SHARE = 0.12;
    private static final double LATEST_START_MIN = 45;
    private static final double LEAST_MIN = 2;
    private static final double MORE_MIN = 10;

    /** Looks no farther ahead; the plant then wakes once for nothing. */
    private static final int HOURS_AHEAD = 24;

    private final int input;
    private final long seed;

    RainSensor(final int input, final long seed) {
        this.input = input;
        this.seed = seed;
    }

    @Override
    public void step(final State state) {
        state.setActive(input, isRaining(state.nowNs()));
    }

    @Override
    public long wakesNs(final State state) {
        final long nowNs = state.nowNs();
        final long thisHour = Math.floorDiv(nowNs, HOUR_NS);
        for (long hour = thisHour; hour < thisHour + HOURS_AHEAD; hour++) {
            if (isWet(hour) && nowNs < startNs(hour)) {
                return startNs(hour);
            }
            if (isWet(hour) && nowNs < endNs(hour)) {
                return endNs(hour);
            }
        }
        return (thisHour + HOURS_AHEAD) * HOUR_NS;
    }

    boolean isRaining(final long atNs) {
        final long hour = Math.floorDiv(atNs, HOUR_NS);
        return isWet(hour) && startNs(hour) <= atNs && atNs < endNs(hour);
    }

    private boolean isWet(final long hour) {
        return Draw.unit(seed, Purpose.RAIN, 0, hour) < WET_HOURS_SHARE;
    }

    private long startNs(final long hour) {
        return hour * HOUR_NS + (long) (LATEST_START_MIN * MINUTE_NS * Draw.unit(seed, Purpose.RAIN, 1, hour));
    }

    /** At the latest 57 minutes past, so that a shower never crosses the hour. */
    private long endNs(final long hour) {
        final double minutes = LEAST_MIN + MORE_MIN * Draw.unit(seed, Purpose.RAIN, 2, hour);
        return startNs(hour) + (long) (minutes * MINUTE_NS);
    }
}
