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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /** Handbook 7.1: PyEphem 4.1.4 (an open-source ephemeris), horizon -0.833 and -6 degrees, centre of the disc. */
    @ParameterizedTest(name = "{0} {4}")
    @CsvSource({
        "London, 51.5, -0.1333, Europe/London, 2015-12-01, 2015-12-01T15:55:17Z, 2015-12-01T16:34:17Z",
        "London, 51.5, -0.1333, Europe/London, 2015-12-25, 2015-12-25T15:55:40Z, 2015-12-25T16:35:58Z",
        "New York, 40.7128, -74.0060, America/New_York, 2026-10-31, 2026-10-31T21:53:24Z, 2026-10-31T22:21:46Z",
        "Chicago, 41.8781, -87.6298, America/Chicago, 2026-10-31, 2026-10-31T22:45:47Z, 2026-10-31T23:14:41Z",
        "Denver, 39.7392, -104.9903, America/Denver, 2025-10-31, 2025-10-31T23:58:38Z, 2025-11-01T00:26:35Z",
        "Los Angeles, 34.0522, -118.2437, America/Los_Angeles, 2024-10-31, 2024-11-01T01:00:22Z, 2024-11-01T01:26:13Z",
        "Seattle, 47.6062, -122.3321, America/Los_Angeles, 2026-12-21, 2026-12-22T00:20:20Z, 2026-12-22T00:56:26Z",
        "Berlin, 52.52, 13.405, Europe/Berlin, 2026-06-21, 2026-06-21T19:33:18Z, 2026-06-21T20:23:33Z",
        "Sydney, -33.8688, 151.2093, Australia/Sydney, 2026-10-31, 2026-10-31T08:21:55Z, 2026-10-31T08:48:21Z",
        "Tokyo, 35.6762, 139.6503, Asia/Tokyo, 2026-03-20, 2026-03-20T08:52:42Z, 2026-03-20T09:18:11Z",
        "Quito, -0.1807, -78.4678, America/Guayaquil, 2026-03-20, 2026-03-20T23:24:30Z, 2026-03-20T23:45:09Z",
        "Reykjavik, 64.1466, -21.9426, Atlantic/Reykjavik, 2026-12-21, 2026-12-21T15:29:25Z, 2026-12-21T16:48:45Z",
        "Greenwich, 51.4779, 0, Europe/London, 2027-10-31, 2027-10-31T16:35:19Z, 2027-10-31T17:10:19Z",
        "Tromso, 69.6492, 18.9553, Europe/Oslo, 2026-10-31, 2026-10-31T13:48:29Z, 2026-10-31T14:59:51Z",
    })
    void sunsetAndDuskAgreeWithAnIndependentEphemerisWithinAMinute(
            final String name,
            final double latitudeDeg,
            final double longitudeDeg,
            final String zone,
            final String date,
            final String sunset,
            final String dusk) {
        final Place place = new Place(latitudeDeg, longitudeDeg, ZoneId.of(zone));

        assertNear(opensAt(place, SUNSET, date), Instant.parse(sunset), 60);
        assertNear(opensAt(place, DUSK, date), Instant.parse(dusk), 60);
    }

    /** Handbook 7.3 cases 1 to 4: published by a time service, kept in the tests of the sun library astral. */
    @Test
    void londonIsAsATimeServicePublishedIt() {
        assertNear(opensAt(LONDON, SUNSET, "2015-12-01"), Instant.parse("2015-12-01T15:55:00Z"), 60);
        assertNear(opensAt(LONDON, DUSK, "2015-12-01"), Instant.parse("2015-12-01T16:34:00Z"), 60);
        assertNear(opensAt(LONDON, SUNSET, "2015-12-12"), Instant.parse("2015-12-12T15:51:00Z"), 60);
        assertNear(opensAt(LONDON, DUSK, "2015-12-25"), Instant.parse("2015-12-25T16:36:00Z"), 60);
    }

    /** Handbook 7.3 cases 5 to 8: a college's table of Decorah, Iowa, for any year; here in 2026, summer time (UTC-5). */
    @ParameterizedTest
    @CsvSource({
        "2026-09-01, 19:41, 20:11",
        "2026-09-11, 19:24, 19:53",
        "2026-09-21, 19:05, 19:34",
        "2026-09-30, 18:49, 19:18",
    })
    void decorahIsAsACollegeTablesItWithinAMinuteAndAHalf(final String date, final String sunset, final String dusk) {
        final Place decorah = new Place(43.3033, -91.7857, ZoneId.of("America/Chicago"));

        assertNear(opensAt(decorah, SUNSET, date), Instant.parse(date + "T" + sunset + ":00-05:00"), 90);
        assertNear(opensAt(decorah, DUSK, date), Instant.parse(date + "T" + dusk + ":00-05:00"), 90);
    }

    /** Handbook 7.5: local clock and daylight saving. */
    @ParameterizedTest
    @CsvSource({
        "40.7128, -74.0060, America/New_York, 2026-10-31, 2026-10-31T17:53:24-04:00",
        "40.7128, -74.0060, America/New_York, 2026-11-01, 2026-11-01T16:52:11-05:00",
        "51.5, -0.1333, Europe/London, 2026-10-24, 2026-10-24T17:48:44+01:00",
        "51.5, -0.1333, Europe/London, 2026-10-25, 2026-10-25T16:46:46+00:00",
        "-33.8688, 151.2093, Australia/Sydney, 2026-10-31, 2026-10-31T19:21:55+11:00",
    })
    void sunsetBelongsToItsLocalDateOnBothSidesOfTheChange(
            final double latitudeDeg,
            final double longitudeDeg,
            final String zone,
            final String date,
            final String sunset) {
        final Place place = new Place(latitudeDeg, longitudeDeg, ZoneId.of(zone));

        assertNear(opensAt(place, SUNSET, date), Instant.parse(sunset), 60);
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
