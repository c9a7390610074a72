package slackwater.simulator.yard;

import slackwater.model.Weather;
import slackwater.simulator.yard.Draw.Purpose;

/**
 * When a motion sensor fires at nobody, as a function of the seed and of time: so often an hour as it says of itself in the
 * wind of a usual evening, half as often in none, and the more the more wind there is at that moment (a guess). At most once in
 * ten seconds.
 */
final class FalseTriggers {
    private static final long SLOT_NS = 10_000_000_000L;
    private static final double SLOTS_PER_HOUR = 360;
    private static final double GRID_POINTS = (double) SLOT_NS / State.GRID_NS;

    /** Looks no farther ahead; the plant then wakes once for nothing. */
    private static final long SLOTS_AHEAD = 360;

    private final int input;
    private final double share;
    private final Wind wind;
    private final long seed;

    FalseTriggers(final int input, final double perHour, final Wind wind, final long seed) {
        this.input = input;
        share = perHour / SLOTS_PER_HOUR;
        this.wind = wind;
        this.seed = seed;
    }

    boolean isAt(final long nowNs) {
        final long slot = Math.floorDiv(nowNs, SLOT_NS);
        return isDrawn(slot) && atNs(slot) == nowNs;
    }

    /** The next one, or a moment before it at which to ask again; never where there are none. */
    long afterNs(final long nowNs) {
        if (share <= 0) {
            return Plant.ASLEEP;
        }
        final long first = Math.floorDiv(nowNs, SLOT_NS);
        for (long slot = first; slot < first + SLOTS_AHEAD; slot++) {
            if (isDrawn(slot) && atNs(slot) > nowNs) {
                return atNs(slot);
            }
        }
        return (first + SLOTS_AHEAD) * SLOT_NS;
    }

    private boolean isDrawn(final long slot) {
        final double windy = (1 + wind.speedMPerS(slot * SLOT_NS) / Weather.USUAL.windMPerS()) / 2;
        return Draw.unit(seed, Purpose.FALSE_TRIGGERS, input, 2 * slot) < share * windy;
    }

    private long atNs(final long slot) {
        final double part = Draw.unit(seed, Purpose.FALSE_TRIGGERS, input, 2 * slot + 1);
        final long point = (long) (part * GRID_POINTS);
        return slot * SLOT_NS + point * State.GRID_NS;
    }
}
