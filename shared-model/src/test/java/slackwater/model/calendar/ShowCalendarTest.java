package slackwater.model.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slackwater.model.Place;
import slackwater.model.Schedule;
import slackwater.model.Schedule.TimeOfDay;
import slackwater.model.calendar.ShowCalendar.Window;

/** Windows by the sun and by the local clock. */
class ShowCalendarTest {
    private static final Set<DayOfWeek> EVERY_DAY = EnumSet.allOf(DayOfWeek.class);
    private static final TimeOfDay DUSK = new TimeOfDay.Dusk(Duration.ZERO);
    private static final TimeOfDay SUNSET = new TimeOfDay.Sunset(Duration.ZERO);
    private static final TimeOfDay FOUR_IN_THE_MORNING = clock("04:00");
    private static final Place LONDON = new Place(51.5, -0.1333, ZoneId.of("Europe/London"));
    private static final Place NEW_YORK = new Place(40.7128, -74.0060, ZoneId.of("America/New_York"));

    private static TimeOfDay clock(final String time) {
        return new TimeOfDay.Clock(LocalTime.parse(time));
    }

    private static ShowCalendar calendar(final Place place, final TimeOfDay opens, final TimeOfDay closes) {
        return new ShowCalendar(new Schedule(opens, closes, EVERY_DAY, Duration.ofMinutes(15)), place);
    }

    private static Optional<Window> window(
            final Place place, final TimeOfDay opens, final TimeOfDay closes, final String date) {
        return calendar(place, opens, closes).windowOn(LocalDate.parse(date));
    }

    private static Instant opensAt(final Place place, final TimeOfDay opens, final String date) {
        final Window window = window(place, opens, FOUR_IN_THE_MORNING, date).orElseThrow();
        assertThat(window.day()).isEqualTo(LocalDate.parse(date).toEpochDay());
        return Instant.ofEpochMilli(window.opensMs());
    }

    private static void assertNear(final Instant computed, final Instant published, final long toleranceS) {
        assertThat(Duration.between(published, computed).abs())
                .as("%s, published %s", computed, published)
                .isLessThanOrEqualTo(Duration.ofSeconds(toleranceS));
    }

    /** Handbook 7.1 case 1; the sun itself is held against the handbook where its days are tested. */
    @Test
    void sunsetAndDuskOpenTheWindow() {
        assertNear(opensAt(LONDON, SUNSET, "2015-12-01"), Instant.parse("2015-12-01T15:55:17Z"), 60);
        assertNear(opensAt(LONDON, DUSK, "2015-12-01"), Instant.parse("2015-12-01T16:34:17Z"), 60);
    }

    /** Handbook 7.5 case 5: the UTC date differs from the local one. */
    @Test
    void duskInLosAngelesIsTheNextDayInUtc() {
        final Place losAngeles = new Place(34.0522, -118.2437, ZoneId.of("America/Los_Angeles"));

        assertNear(opensAt(losAngeles, DUSK, "2026-10-31"), Instant.parse("2026-10-31T18:26:39-07:00"), 60);
    }

    /** Handbook 7.2 case 1. */
    @Test
    void thePolarNightHasADuskButNoSunset() {
        final Place tromso = new Place(69.6492, 18.9553, ZoneId.of("Europe/Oslo"));

        assertThat(window(tromso, SUNSET, FOUR_IN_THE_MORNING, "2026-12-21")).isEmpty();
        assertNear(opensAt(tromso, DUSK, "2026-12-21"), Instant.parse("2026-12-21T12:53:13Z"), 60);
    }

    /** Handbook 7.2 case 2. */
    @Test
    void theMidnightSunGivesNoWindowThatDayAndTheNextOneIsFoundInAutumn() {
        final Place tromso = new Place(69.6492, 18.9553, ZoneId.of("Europe/Oslo"));
        assertThat(window(tromso, SUNSET, FOUR_IN_THE_MORNING, "2026-06-21")).isEmpty();
        assertThat(window(tromso, DUSK, FOUR_IN_THE_MORNING, "2026-06-21")).isEmpty();

        final Window next = calendar(tromso, SUNSET, FOUR_IN_THE_MORNING)
                .windowAfter(Instant.parse("2026-06-21T12:00:00Z").toEpochMilli())
                .orElseThrow();

        assertThat(LocalDate.ofEpochDay(next.day())).isBetween(LocalDate.of(2026, 7, 20), LocalDate.of(2026, 8, 1));
    }

    /** Handbook 7.2 case 3: the sun sets after midnight, and belongs to the evening of the date before; it gives no dusk. */
    @Test
    void aSunsetAfterMidnightBelongsToTheEveningOfItsDate() {
        final Place reykjavik = new Place(64.1466, -21.9426, ZoneId.of("Atlantic/Reykjavik"));

        assertNear(opensAt(reykjavik, SUNSET, "2026-06-21"), Instant.parse("2026-06-22T00:04:02Z"), 60);
        assertThat(window(reykjavik, DUSK, FOUR_IN_THE_MORNING, "2026-06-21")).isEmpty();
    }

    @Test
    void anOffsetMovesTheOpeningBySoMuch() {
        final Instant dusk = opensAt(LONDON, DUSK, "2026-10-31");
        final Instant sunset = opensAt(LONDON, SUNSET, "2026-10-31");

        assertThat(opensAt(LONDON, new TimeOfDay.Dusk(Duration.ofMinutes(20)), "2026-10-31"))
                .isEqualTo(dusk.plusSeconds(20 * 60));
        assertThat(opensAt(LONDON, new TimeOfDay.Sunset(Duration.ofMinutes(-10)), "2026-10-31"))
                .isEqualTo(sunset.minusSeconds(10 * 60));
    }

    @Test
    void aLocalTimeThatIsSkippedMovesLater() {
        assertThat(opensAt(LONDON, clock("01:30"), "2026-03-29")).isEqualTo(Instant.parse("2026-03-29T02:30:00+01:00"));
        assertThat(opensAt(NEW_YORK, clock("02:30"), "2026-03-08"))
                .isEqualTo(Instant.parse("2026-03-08T03:30:00-04:00"));
    }

    @Test
    void aLocalTimeThatComesTwiceIsTheFirst() {
        assertThat(opensAt(LONDON, clock("01:30"), "2026-10-25")).isEqualTo(Instant.parse("2026-10-25T01:30:00+01:00"));
        assertThat(opensAt(NEW_YORK, clock("01:30"), "2026-11-01"))
                .isEqualTo(Instant.parse("2026-11-01T01:30:00-04:00"));
    }

    @Test
    void aClosingTimeThatComesTwiceIsTheFirstToo() {
        final Window window =
                window(LONDON, clock("20:00"), clock("01:30"), "2026-10-24").orElseThrow();

        assertThat(Instant.ofEpochMilli(window.closesMs())).isEqualTo(Instant.parse("2026-10-25T01:30:00+01:00"));
    }

    @Test
    void aClosingTimeEarlierThanTheOpeningIsTheNextDay() {
        final Window window =
                window(LONDON, clock("20:00"), clock("00:30"), "2026-10-31").orElseThrow();

        assertThat(Instant.ofEpochMilli(window.opensMs())).isEqualTo(Instant.parse("2026-10-31T20:00:00Z"));
        assertThat(Instant.ofEpochMilli(window.closesMs())).isEqualTo(Instant.parse("2026-11-01T00:30:00Z"));
        assertThat(Instant.ofEpochMilli(window.warmsMs())).isEqualTo(Instant.parse("2026-10-31T19:45:00Z"));
        assertThat(window.day()).isEqualTo(LocalDate.of(2026, 10, 31).toEpochDay());
    }

    @Test
    void aClosingTimeOneMinuteAfterTheOpeningIsTheSameDayAndAnEqualOneTheNext() {
        final Window shortest =
                window(LONDON, clock("20:00"), clock("20:01"), "2026-11-10").orElseThrow();
        final Window whole =
                window(LONDON, clock("20:00"), clock("20:00"), "2026-11-10").orElseThrow();

        assertThat(shortest.closesMs() - shortest.opensMs())
                .isEqualTo(Duration.ofMinutes(1).toMillis());
        assertThat(whole.closesMs() - whole.opensMs())
                .isEqualTo(Duration.ofDays(1).toMillis());
    }

    @Test
    void onlyTheDaysNamedHaveAWindow() {
        final Schedule weekend = new Schedule(
                clock("20:00"), clock("22:00"), EnumSet.of(DayOfWeek.FRIDAY, DayOfWeek.SATURDAY), Duration.ZERO);
        final ShowCalendar calendar = new ShowCalendar(weekend, LONDON);

        assertThat(calendar.windowOn(LocalDate.of(2026, 10, 29))).isEmpty();
        assertThat(calendar.windowOn(LocalDate.of(2026, 10, 30))).isPresent();
        assertThat(calendar.windowOn(LocalDate.of(2026, 10, 31))).isPresent();
        assertThat(calendar.windowOn(LocalDate.of(2026, 11, 1))).isEmpty();
        assertThat(calendar.windowAfter(Instant.parse("2026-11-01T12:00:00Z").toEpochMilli())
                        .orElseThrow()
                        .day())
                .isEqualTo(LocalDate.of(2026, 11, 6).toEpochDay());
    }

    @Test
    void aScheduleWithoutDaysNeverOpens() {
        final Schedule never = new Schedule(clock("20:00"), clock("22:00"), Set.of(), Duration.ZERO);

        assertThat(new ShowCalendar(never, LONDON).windowAfter(0)).isEmpty();
    }

    @Test
    void theWindowIsFoundUntilItCloses() {
        final ShowCalendar calendar = calendar(LONDON, clock("20:00"), clock("00:30"));
        final long closesMs = Instant.parse("2026-11-01T00:30:00Z").toEpochMilli();

        assertThat(calendar.windowAfter(closesMs - 1).orElseThrow().closesMs()).isEqualTo(closesMs);
        assertThat(calendar.windowAfter(closesMs).orElseThrow().day())
                .isEqualTo(LocalDate.of(2026, 11, 1).toEpochDay());
    }

    @Test
    void aWindowThatClosesByTheSunClosesThen() {
        final Window window = window(LONDON, clock("12:00"), DUSK, "2015-12-01").orElseThrow();

        assertNear(Instant.ofEpochMilli(window.closesMs()), Instant.parse("2015-12-01T16:34:17Z"), 60);
    }
}
