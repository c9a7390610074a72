package slackwater.model.calendar;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shredzone.commons.suncalc.SunTimes;
import slackwater.model.Place;

/**
 * The sun on one local date at a place, by the library commons-suncalc (within a minute of the handbook's section 7): the rise from
 * midnight on, set and dusk from noon on, so that a set or a dusk after midnight still belongs to the evening of its date. What does
 * not come within a day, as in polar summer and winter, is empty.
 */
public record SunDay(LocalDate date, Place place) {
    private static final int NOON = 12;

    /** The sun's upper edge comes over the horizon. */
    public Optional<ZonedDateTime> rises() {
        final @Nullable ZonedDateTime rise = from(0, SunTimes.Twilight.VISUAL).getRise();
        return Optional.ofNullable(rise);
    }

    /** The sun's upper edge goes under the horizon. */
    public Optional<ZonedDateTime> sets() {
        final @Nullable ZonedDateTime set = from(NOON, SunTimes.Twilight.VISUAL).getSet();
        return Optional.ofNullable(set);
    }

    /** Civil dusk: the sun's middle is six degrees under the horizon. */
    public Optional<ZonedDateTime> darkens() {
        final @Nullable ZonedDateTime dusk = from(NOON, SunTimes.Twilight.CIVIL).getSet();
        return Optional.ofNullable(dusk);
    }

    private SunTimes from(final int hour, final SunTimes.Twilight twilight) {
        return SunTimes.compute()
                .on(date.atTime(hour, 0).atZone(place.zone()))
                .at(place.latitudeDeg(), place.longitudeDeg())
                .timezone(place.zone())
                .twilight(twilight)
                .oneDay()
                .execute();
    }
}
