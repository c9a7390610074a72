package slackwater.model;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Set;

/**
 * When the rig arms and stands down by itself.
 *
 * @param opens start of the window
 * @param closes end of the window, after the opening; past midnight when earlier than it
 * @param days local days on which a window opens
 * @param warmUp heaters may warm for so long before the opening
 */
public record Schedule(TimeOfDay opens, TimeOfDay closes, Set<DayOfWeek> days, Duration warmUp) {
    public Schedule {
        days = Set.copyOf(days);
    }

    /** A moment of a local day. */
    public sealed interface TimeOfDay {
        /** By the local clock. A time skipped by daylight saving is moved later; one that occurs twice is the first. */
        record Clock(LocalTime time) implements TimeOfDay {}

        /** At the end of civil twilight, moved by {@code offset}. */
        record Dusk(Duration offset) implements TimeOfDay {}

        /** At sunset, moved by {@code offset}. */
        record Sunset(Duration offset) implements TimeOfDay {}
    }
}
