package slackwater.controller.mode;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request.Wants;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.model.Mode;

/** A schedule arms only on its window's start, seen live with trusted time, once per local date (S5). London, in winter. */
class ScheduleTest {
    private static final long MINUTE = 60_000;
    private static final long HOUR = 60 * MINUTE;
    private static final long WARNING_MS = 5_000;
    private static final String FROM_EIGHT_TO_TEN = schedule("20:00", "22:00");

    private static String schedule(final String opens, final String closes) {
        return """
                [schedule]
                opens = "%s"
                closes = "%s"
                days = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"]
                warm-up = "15 min"
                """.formatted(opens, closes);
    }

    /** A moment of UTC, which is London's local time in winter. */
    private static long utc(final int month, final int day, final int hour, final int minute) {
        return LocalDateTime.of(2026, month, day, hour, minute)
                .toInstant(ZoneOffset.UTC)
                .toEpochMilli();
    }

    private static TestYard readyAt(final String show, final long epochMs) {
        return TestRigs.ready(TestYard.of(TestRigs.TWO_ZONES, show).clock(epochMs))
                .clock(epochMs)
                .scan();
    }

    /** Ready on the 10th of November, ten minutes before eight, and one scan later. */
    private static TestYard tenToEight() {
        return readyAt(FROM_EIGHT_TO_TEN, utc(11, 10, 19, 50));
    }

    private static TestYard openedAtEight() {
        final TestYard yard = tenToEight().skip(10 * MINUTE).scan(WARNING_MS);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
        return yard;
    }

    private static void assertStaysAtRest(final TestYard yard) {
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        yard.scan(WARNING_MS + 100);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void everyZoneArmsInTheScanThatSeesTheStartAndNotInTheOneBefore() {
        final TestYard yard = tenToEight().skip(10 * MINUTE - 10);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);

        yard.scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
        assertThat(yard.mode("back")).isEqualTo(Mode.WARNING);
        assertThat(yard.news()).contains("schedule: open front taken", "schedule: open back taken");
    }

    @Test
    void theWindowsEndStandsDownInItsOwnScan() {
        final TestYard yard = openedAtEight().skip(2 * HOUR - WARNING_MS - 20);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);

        yard.skip(20);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.news()).contains("schedule: close front taken");
    }

    @Test
    void itOpensAgainTheNextEvening() {
        final TestYard yard = openedAtEight().skip(2 * HOUR);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);

        yard.skip(22 * HOUR - WARNING_MS - 20).scan(20);
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void whatDoesNotMeetTheArmingRulesIsRefusedByTheScheduleToo() {
        final TestYard yard = tenToEight().set("curtain", true).scan(20);
        yard.news();

        yard.skip(10 * MINUTE);

        assertThat(yard.news()).contains("schedule: open front refused: curtain is not proven clear");
        assertStaysAtRest(yard);
        assertThat(yard.mode("back")).isEqualTo(Mode.ARMED);
    }

    @Test
    void aControllerThatStartsAgainInsideTheWindowDoesNotArm() {
        final TestYard yard = openedAtEight();

        TestRigs.ready(yard.restart());
        assertStaysAtRest(yard);
        assertStaysAtRest(yard.skip(HOUR));

        yard.skip(23 * HOUR - 30_000).scan(40_000);
        assertThat(yard.mode("front")).as("the next evening").isEqualTo(Mode.ARMED);
    }

    @Test
    void aControllerThatStartsExactlyAtTheOpeningDoesNotArm() {
        final TestYard yard = readyAt(FROM_EIGHT_TO_TEN, utc(11, 10, 20, 0));

        assertStaysAtRest(yard);
    }

    @Test
    void aPersonMayArmAgainInsideTheWindowAfterARestart() {
        final TestYard yard = openedAtEight();

        TestRigs.ready(yard.restart()).ask(Wants.ARM, "front").scan(WARNING_MS);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);

        yard.skip(2 * HOUR);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aClockSetBackOverTheOpeningDoesNotArmTwiceOnOneDate() {
        final TestYard yard = openedAtEight().press("off", 100);

        yard.clock(utc(11, 10, 19, 59)).scan().skip(MINUTE).scan();
        assertStaysAtRest(yard);

        yard.skip(24 * HOUR - WARNING_MS - 200).scan(WARNING_MS + 1_000);
        assertThat(yard.mode("front")).isIn(Mode.WARNING, Mode.ARMED);
    }

    @Test
    void aClockSetBackAfterARestartDoesNotArmTwiceOnOneDateEither() {
        final TestYard yard = openedAtEight();
        assertThat(yard.store().read().orElseThrow().openedDay())
                .isEqualTo(java.time.LocalDate.of(2026, 11, 10).toEpochDay());

        TestRigs.ready(yard.restart().clock(utc(11, 10, 19, 58)));
        yard.clock(utc(11, 10, 19, 59)).scan().skip(MINUTE).scan();

        assertStaysAtRest(yard);
    }

    @Test
    void aClockSetBackToTheDayBeforeDoesNotArmThatDay() {
        final TestYard yard = openedAtEight().press("off", 100);

        yard.clock(utc(11, 9, 19, 59)).scan().skip(MINUTE).scan();

        assertStaysAtRest(yard);
    }

    @Test
    void aClockThatJumpsForwardOverTheOpeningDoesNotArm() {
        final TestYard yard = tenToEight().clock(utc(11, 10, 20, 5)).scan();

        assertStaysAtRest(yard);
    }

    @Test
    void aCorrectionOfTwoSecondsIsNoJumpAndOneMillisecondMoreIs() {
        final TestYard small = tenToEight().skip(10 * MINUTE - 1_000).scan();
        small.clock(utc(11, 10, 19, 59) + 59_010 + 2_010).scan();
        assertThat(small.mode("front")).isEqualTo(Mode.WARNING);

        final TestYard large = tenToEight().skip(10 * MINUTE - 1_000).scan();
        large.clock(utc(11, 10, 19, 59) + 59_010 + 2_011).scan();
        assertStaysAtRest(large);
    }

    @Test
    void timeThatIsNotTrustedNeverArms() {
        final TestYard yard = tenToEight().trust(false).scan().skip(10 * MINUTE);

        assertStaysAtRest(yard);
    }

    @Test
    void timeThatIsTrustedOnlyInsideTheWindowDoesNotArm() {
        final TestYard yard = tenToEight().trust(false).scan().skip(40 * MINUTE);

        assertStaysAtRest(yard.trust(true).scan());
    }

    @Test
    void timeThatIsTrustedAgainBeforeTheOpeningArms() {
        final TestYard yard =
                tenToEight().trust(false).scan().trust(true).scan().skip(10 * MINUTE);

        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void timeThatIsTrustedForTheFirstTimeInTheVeryScanOfTheOpeningDoesNotArm() {
        final TestYard yard = tenToEight()
                .trust(false)
                .scan()
                .skip(10 * MINUTE - 20)
                .trust(true)
                .scan();

        assertStaysAtRest(yard);
    }

    @Test
    void closingStandsDownAlsoAfterAJump() {
        final TestYard yard = openedAtEight().clock(utc(11, 10, 22, 30)).scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void closingStandsDownAsSoonAsTimeIsTrustedAgain() {
        final TestYard yard = openedAtEight().trust(false).scan().skip(3 * HOUR);
        assertThat(yard.mode("front")).as("nobody knows the time").isEqualTo(Mode.ARMED);

        yard.trust(true).scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void warmingBeginsAtItsTimeAndEndsWithTheWindow() {
        final TestYard yard = readyAt(FROM_EIGHT_TO_TEN, utc(11, 10, 19, 40)).skip(5 * MINUTE - 10);
        assertThat(yard.isEnergised("heater")).isFalse();

        yard.scan();
        assertThat(yard.isEnergised("heater")).isTrue();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.news()).contains("schedule: warm front taken");

        yard.skip(15 * MINUTE);
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
        yard.scan(WARNING_MS);
        assertThat(yard.isEnergised("heater")).isTrue();

        yard.skip(2 * HOUR).scan();
        assertThat(yard.isEnergised("heater")).isFalse();
    }

    @Test
    void warmingEndsAtClosingEvenWhenTheZoneWasNeverArmed() {
        final TestYard yard = readyAt(FROM_EIGHT_TO_TEN, utc(11, 10, 19, 40)).skip(6 * MINUTE);
        assertThat(yard.isEnergised("heater")).isTrue();
        yard.set("curtain", true).scan().skip(14 * MINUTE);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);

        yard.skip(2 * HOUR);

        assertThat(yard.isEnergised("heater")).isFalse();
    }

    @Test
    void warmingIsNotBegunAfterAStartInsideTheWarmUp() {
        final TestYard yard = tenToEight().scan(100);

        assertThat(yard.isEnergised("heater")).isFalse();
    }

    @Test
    void aQuietYardIsWokenForTheWarmUpTheOpeningAndTheClosing() {
        final TestYard yard = readyAt(FROM_EIGHT_TO_TEN, utc(11, 10, 12, 0)).skip(HOUR);
        assertThat(yard.wakesAtEpochMs()).isEqualTo(utc(11, 10, 19, 45));

        yard.skip(6 * HOUR + 45 * MINUTE - 10).scan(1_000);
        assertThat(yard.news()).contains("schedule: warm front taken");
        assertThat(yard.wakesAtEpochMs()).isEqualTo(utc(11, 10, 20, 0));

        yard.skip(15 * MINUTE).scan(60_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
        assertThat(yard.wakesAtEpochMs()).isEqualTo(utc(11, 10, 22, 0));

        yard.skip(2 * HOUR).scan(60_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.wakesAtEpochMs()).isEqualTo(utc(11, 11, 19, 45));
    }

    @Test
    void aQuietYardWhoseClockIsCorrectedIsWokenByTheNewTime() {
        final TestYard yard = readyAt(FROM_EIGHT_TO_TEN, utc(11, 10, 12, 0)).skip(HOUR);

        yard.clock(utc(11, 10, 18, 0)).scan(1_000);

        assertThat(yard.wakesAtEpochMs()).isEqualTo(utc(11, 10, 19, 45));
    }

    @Test
    void aYardThatKnowsTheTimeFromItsFirstScanIsWokenToo() {
        final TestYard yard = TestYard.of(TestRigs.TWO_ZONES, FROM_EIGHT_TO_TEN).clock(utc(11, 10, 12, 0));

        yard.scan(60_000).skip(HOUR);

        assertThat(yard.wakesAtEpochMs()).isEqualTo(utc(11, 10, 19, 45));
    }

    /** The arming rules then refuse it, and the record says so: nobody wonders why the evening did not begin. */
    @Test
    void anOpeningInTheSecondScanAfterPowerOnIsSeenAndRefusedInWords() {
        final TestYard yard = TestYard.of(TestRigs.TWO_ZONES, FROM_EIGHT_TO_TEN).clock(utc(11, 10, 20, 0) - 10);

        yard.scan(20);

        assertThat(yard.news()).anyMatch(text -> text.startsWith("schedule: open front refused: "));
    }

    @Test
    void warmingOpeningAndClosingAreEachAskedForOnce() {
        final TestYard yard = readyAt(FROM_EIGHT_TO_TEN, utc(11, 10, 19, 40));
        yard.news();

        yard.skip(5 * MINUTE - 10).scan(100);
        assertThat(yard.news()).containsOnlyOnce("schedule: warm front taken");
        yard.skip(15 * MINUTE - 100).scan(100);
        assertThat(yard.news()).containsOnlyOnce("schedule: open front taken");
        yard.skip(2 * HOUR - 100).scan(100);
        assertThat(yard.news()).containsOnlyOnce("schedule: close front taken");
    }

    @Test
    void aClockThatWasDaysAheadOpensOnTheEveningThatItReallyIs() {
        final TestYard yard = readyAt(FROM_EIGHT_TO_TEN, utc(11, 14, 12, 0));

        yard.clock(utc(11, 10, 19, 59)).scan().skip(MINUTE).scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void whatWasLatchedBeforeARestartIsSeenBeforeTheFirstScan() {
        final TestYard yard = TestRigs.ready();
        yard.scanner().commandDesk().lockOutZone("front", "Ole");
        yard.scan().restart();

        assertThat(yard.mode("front")).isEqualTo(Mode.LOCKED_OUT);
        assertThat(yard.outputMode("lid")).isEqualTo(Mode.LOCKED_OUT);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);
    }

    @Test
    void theLocalKeyArmsWithNoTimeAtAll() {
        final TestYard yard = TestRigs.ready(TestYard.of(TestRigs.TWO_ZONES, FROM_EIGHT_TO_TEN));

        yard.set("arm-key", true).scan(60).scan(WARNING_MS);

        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
    }

    @Test
    void anHourThatComesTwiceOpensOnce() {
        // Europe/London, 25 October 2026: 01:00 to 02:00 comes first in summer time (from 00:00 UTC), then in winter
        // time
        final TestYard yard =
                readyAt(schedule("01:30", "03:00"), utc(10, 25, 0, 29)).skip(MINUTE);
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
        yard.scan(WARNING_MS).press("off", 100);

        yard.skip(HOUR - WARNING_MS - 1_000).scan(2_000);
        assertStaysAtRest(yard);
    }

    @Test
    void anHourThatComesTwiceClosesAtTheEndOfTheSecond() {
        final TestYard yard = readyAt(schedule("01:30", "03:00"), utc(10, 25, 0, 29))
                .skip(MINUTE)
                .scan(WARNING_MS);

        yard.skip(2 * HOUR + 30 * MINUTE - WARNING_MS - 30);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
        yard.skip(30);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void anHourThatIsSkippedOpensLater() {
        // Europe/London, 29 March 2026: 01:30 is skipped, and becomes 02:30 summer time, 01:30 UTC
        final TestYard yard =
                readyAt(schedule("01:30", "04:00"), utc(3, 29, 1, 29)).skip(MINUTE - 20);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        yard.skip(20);
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void anOpeningAtTheSameLocalTimeFollowsTheChangeOfTheClock() {
        // 24 October 2026 is still summer time: 20:00 is 19:00 UTC; the next evening it is 20:00 UTC
        final TestYard yard = readyAt(FROM_EIGHT_TO_TEN, utc(10, 24, 18, 59)).skip(MINUTE);
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);

        yard.skip(2 * HOUR).skip(22 * HOUR).scan(20);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        yard.skip(HOUR);
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void aPowerCycleWhileLockedOutStaysLockedOutUntilThatPersonComes() {
        final TestYard yard = TestRigs.armed();
        yard.scanner().commandDesk().lockOutZone("front", "Maren");
        yard.scanner().commandDesk().lockOutOutput("jet", "Ole");
        yard.scan();

        TestRigs.ready(yard.restart());
        assertThat(yard.mode("front")).isEqualTo(Mode.LOCKED_OUT);
        assertThat(yard.outputMode("jet")).isEqualTo(Mode.LOCKED_OUT);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);

        yard.send(Wants.UNLOCK_ZONE, "front", "Ole", TestYard.secretOf("Ole")).scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.LOCKED_OUT);
        yard.send(Wants.UNLOCK_ZONE, "front", "Maren", TestYard.secretOf("Maren"))
                .scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        yard.send(Wants.UNLOCK_OUTPUT, "jet", "Ole", TestYard.secretOf("Ole")).scan();
        assertThat(yard.outputMode("jet")).isEqualTo(Mode.RESTING);
        assertThat(yard.store().read().orElseThrow().lockouts()).isEmpty();
    }

    @Test
    void stopFaultsAndTripsOutliveARestart() {
        final TestYard yard = TestRigs.ready().set("water", false).scan(600);
        final var run = yard.scanner().run();
        final var image = yard.scanner().image();
        yard.plan().latches().faultOutput(run, image, yard.plan().places().output("lid"), "a test");
        yard.plan().latches().faultZone(run, image, yard.plan().places().zone("back"), "a test");
        yard.plan().latches().faultController(run, image, "a test");
        yard.scanner().commandDesk().stop();
        yard.scan();
        assertThat(yard.store().read().orElseThrow().latched())
                .containsExactly("stop", "fault", "zone back", "output lid", "trip dry");

        yard.restart().set("water", true).scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
        yard.set("water", true).scan(1_000).press("reset", 100);

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.store().read().orElseThrow().latched()).isEmpty();
    }

    @Test
    void eachLatchAloneIsRestoredAsItself() {
        final List<String> kinds = List.of("stop", "fault", "zone back", "output lid", "trip dry");
        for (final String kept : kinds) {
            final TestYard yard = TestYard.of(
                    TestRigs.TWO_ZONES,
                    "",
                    LatchStore.inMemory(new Kept(List.of(kept), new TreeMap<>(), List.of(), -1)));
            yard.set("stop-loop", true).set("water", true).scan();

            assertThat(yard.plan().latches().isStopped(yard.scanner().run())).isEqualTo(kept.equals("stop"));
            assertThat(yard.plan().latches().isControllerFaulted(yard.scanner().run()))
                    .isEqualTo(kept.equals("fault"));
            assertThat(yard.mode("back"))
                    .isEqualTo(
                            kept.equals("stop")
                                    ? Mode.STOPPED
                                    : kept.equals("fault") || kept.equals("zone back") ? Mode.FAULTED : Mode.RESTING);
            assertThat(yard.outputMode("lid") == Mode.FAULTED)
                    .isEqualTo(kept.equals("fault") || kept.equals("output lid"));
            assertThat(yard.outputMode("mist") == Mode.FAULTED)
                    .isEqualTo(kept.equals("fault") || kept.equals("trip dry"));
            assertThat(yard.news()).anyMatch(text -> text.endsWith("latched: it was latched before the restart"));
        }
    }

    @Test
    void aStoreThatCannotBeReadCountsAsLockedOutAndOnlyTheOverrideOpens() {
        final TestYard yard = TestRigs.ready(TestYard.of(TestRigs.TWO_ZONES, "", new Unreadable()));
        assertThat(yard.mode("front")).isEqualTo(Mode.LOCKED_OUT);
        assertThat(yard.mode("back")).isEqualTo(Mode.LOCKED_OUT);
        yard.ask(Wants.ARM, "front");
        assertThat(yard.news()).contains("arm front by Maren refused: zone front is locked out");

        yard.send(Wants.UNLOCK_ZONE, "front", "Maren", TestYard.secretOf("Maren"))
                .scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.LOCKED_OUT);
        yard.send(Wants.UNLOCK_ZONE, "front", "Maren", TestYard.OVERRIDE).scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.mode("back")).isEqualTo(Mode.LOCKED_OUT);
    }

    private static final class Unreadable implements LatchStore {
        @Override
        public Optional<Kept> read() {
            return Optional.empty();
        }

        @Override
        public void keep(final Kept kept) {
            // whatever is kept, it cannot be read
        }
    }
}
