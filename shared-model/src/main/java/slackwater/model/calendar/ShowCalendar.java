package slackwater.model.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;
import slackwater.model.Place;
import slackwater.model.Schedule;
import slackwater.model.Schedule.TimeOfDay;

/**
 * The windows of a schedule at a place. Daylight saving follows the place's zone: a local time that is skipped moves later,
 * one that occurs twice is the first. Where the sun gives no dusk on a date (polar summer), that date has no window.
 */
public final class ShowCalendar {
    private static final int DAYS_AHEAD_MAX = 400;

    private final Schedule schedule;
    private final Place place;

    public ShowCalendar(final Schedule schedule, final Place place) {
        this.schedule = schedule;
        this.place = place;
    }

    /**
     * One opening.
     *
     * @param warmsMs heaters may warm from here, milliseconds since 1970 UTC
     * @param opensMs the zones arm
     * @param closesMs the zones stand down
     * @param day the local date of the opening, in days since 1970
     */
    public record Window(long warmsMs, long opensMs, long closesMs, long day) {}

    /** The first window that closes after a moment, or empty when there is none within {@value #DAYS_AHEAD_MAX} days. */
    public Optional<Window> windowAfter(final long epochMs) {
        final LocalDate from =
                Instant.ofEpochMilli(epochMs).atZone(place.zone()).toLocalDate().minusDays(1);
        for (int i = 0; i < DAYS_AHEAD_MAX; i++) {
            final Optional<Window> window = windowOn(from.plusDays(i));
            if (window.isPresent() && window.get().closesMs() > epochMs) {
                return window;
            }
        }
        return Optional.empty();
    }

    /** The window that opens on a local date. */
    public Optional<Window> windowOn(final LocalDate date) {
        if (!schedule.days().contains(date.getDayOfWeek())) {
            return Optional.empty();
        }
        final Optional<ZonedDateTime> opens = at(schedule.opens(), date);
        final Optional<ZonedDateTime> closes = at(schedule.closes(), date);
        if (opens.isEmpty() || closes.isEmpty()) {
            return Optional.empty();
        }
        final Optional<ZonedDateTime> end =
                closes.get().isAfter(opens.get()) ? closes : at(schedule.closes(), date.plusDays(1));
        return end.map(closing -> {
            final long opensMs = opens.get().toInstant().toEpochMilli();
            return new Window(
                    opensMs - schedule.warmUp().toMillis(),
                    opensMs,
                    closing.toInstant().toEpochMilli(),
                    date.toEpochDay());
        });
    }

    private Optional<ZonedDateTime> at(final TimeOfDay time, final LocalDate date) {
        if (time instanceof TimeOfDay.Clock clock) {
            return Optional.of(date.atTime(clock.time()).atZone(place.zone()));
        }
        final SunDay sun = new SunDay(date, place);
        if (time instanceof TimeOfDay.Dusk dusk) {
            return sun.darkens().map(moment -> moment.plus(dusk.offset()));
        }
        final TimeOfDay.Sunset sunset = (TimeOfDay.Sunset) time;
        return sun.sets().map(moment -> moment.plus(sunset.offset()));
    }
}
