package slackwater.controller.mode;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request.Wants;
import slackwater.model.Mode;

/** What must be so before a zone is armed, the warning, and the air that settles (S6). */
class ArmingTest {
    private static final long WARNING_MS = 5_000;
    private static final long AIR_SETTLES_MS = 3_000;
    private static final String HELD_UP = TestRigs.TWO_ZONES.replace(
            "board = \"pi-4\"", "board = \"pi-4\"\nhold-up = { pin = 12, drop-out = \"400 ms\", seen-pin = 4 }");

    private static TestYard booted() {
        return TestYard.of(TestRigs.TWO_ZONES, TestRigs.GREETING)
                .set("stop-loop", true)
                .set("water", true);
    }

    private static void assertRefused(final TestYard yard, final String why) {
        yard.news();
        yard.ask(Wants.ARM, "front");
        assertThat(yard.news()).containsExactly("arm front by Maren refused: " + why);
        assertThat(yard.mode("front")).isNotIn(Mode.WARNING, Mode.ARMED);
    }

    @Test
    void nothingThatIsStoppedFaultedOrLockedOutArms() {
        final TestYard stopped = TestRigs.ready();
        stopped.scanner().commandDesk().stop();
        stopped.scan();
        assertRefused(stopped, "zone front is stopped");

        final TestYard lockedOut = TestRigs.ready();
        lockedOut.scanner().commandDesk().lockOutZone("front", "Ole");
        lockedOut.scan();
        assertRefused(lockedOut, "zone front is locked out");

        final TestYard faulted = TestRigs.ready();
        faulted.plan()
                .latches()
                .faultZone(faulted.scanner().run(), faulted.scanner().image(), 0, "a test says so");
        faulted.scan();
        assertRefused(faulted, "zone front is faulted");
    }

    @Test
    void aStopLoopThatIsNotYetProvenClosedRefuses() {
        final TestYard yard = booted().scan(190);
        assertRefused(yard, "stop-loop is not proven closed");
    }

    @Test
    void aStopThatWasNotTriedSincePowerOnRefuses() {
        final TestYard yard = booted().scan(1_000);
        assertRefused(yard, "stop-loop has not been tried since power-on: press the stop once and reset it");
    }

    @Test
    void aReachThatWasNotTriedSincePowerOnRefuses() {
        final TestYard yard = booted().scan(1_000);
        yard.set("stop-loop", false).scan(300).set("stop-loop", true).scan(300).press("reset", 100);
        assertRefused(yard, "curtain has not been tried since power-on: walk through it once");
    }

    @Test
    void somebodyInTheReachRefusesUntilItIsProvenClear() {
        final TestYard yard = TestRigs.ready().set("curtain", true).scan(300);
        assertRefused(yard, "curtain is not proven clear");

        yard.set("curtain", false).scan(190);
        assertRefused(yard, "curtain is not proven clear");

        yard.ask(Wants.ARM, "front");
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void somethingThatMovesAndIsNotAtRestRefuses() {
        final TestYard yard = TestRigs.ready();
        yard.scanner().image().energised[yard.plan().places().output("lid")] = true;

        yard.ask(Wants.ARM, "front");

        assertThat(yard.news()).contains("arm front by Maren refused: lid is not at rest");
    }

    @Test
    void aLampThatIsNotAtRestRefusesNothing() {
        final TestYard yard = TestRigs.ready();
        yard.scanner().image().energised[yard.plan().places().output("glow")] = true;

        yard.ask(Wants.ARM, "front");

        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void aHoldUpRelayThatWasNotSeenToDropAndCloseRefuses() {
        final TestYard yard = TestRigs.ready(TestYard.of(HELD_UP));
        assertRefused(yard, "the hold-up relay has not passed its drop test");

        yard.holdUpIsClosed(true).scan(20).ask(Wants.ARM, "front");

        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void aZoneThatIsAboutToBeArmedOrIsArmedIsNotArmedAgain() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "front");
        yard.news();
        yard.ask(Wants.ARM, "front");
        assertThat(yard.news())
                .containsExactly("arm front by Maren refused: zone front is armed already; stand it down first");

        yard.scan(WARNING_MS);
        yard.news();
        yard.ask(Wants.ARM, "front");
        assertThat(yard.news())
                .containsExactly("arm front by Maren refused: zone front is armed already; stand it down first");
    }

    @Test
    void theWarningLastsExactlyItsTime() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "front");

        yard.scan(WARNING_MS - 10);
        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);

        yard.scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
    }

    @Test
    void aPersonInTheWarningsLastScanCancelsIt() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "front").scan(WARNING_MS - 10);
        yard.news();

        yard.set("curtain", true).scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.news()).contains("arm front refused: somebody entered the reach during the warning");
        yard.set("curtain", false).scan(WARNING_MS);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aDetectionShorterThanAScanCancelsTheWarningToo() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "front").scan(WARNING_MS - 10);

        yard.pulse("curtain").scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void theReachOfOneZoneDoesNotCancelTheWarningOfAnother() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "back").set("curtain", true);

        yard.scan(WARNING_MS);

        assertThat(yard.mode("back")).isEqualTo(Mode.ARMED);
    }

    @Test
    void aStopInTheWarningsLastScanWins() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "front").scan(WARNING_MS - 10);

        yard.pulse("stop-loop").scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);

        yard.scan(300).press("reset", 100).scan(WARNING_MS);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void airComesWithArmingAndSettlesBeforeACueMayStart() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "front").scan(WARNING_MS - 10);
        assertThat(yard.isEnergised("air")).isFalse();

        yard.scan();
        assertThat(yard.isEnergised("air")).isTrue();

        yard.scan(AIR_SETTLES_MS - 20).set("path", true).scan();
        assertThat(yard.mayGreet("front")).isFalse();
        assertThat(yard.isEnergised("lid")).isFalse();

        yard.set("path", false).scan();
        assertThat(yard.mayGreet("front")).isTrue();
        yard.scan(300).set("path", true).scan();
        assertThat(yard.isEnergised("lid")).isTrue();
    }

    @Test
    void theBenchIsReachedOnlyFromRestAndOnlyWithNothingLatched() {
        final TestYard yard = TestRigs.armed();
        yard.ask(Wants.BENCH, "front");
        assertThat(yard.news())
                .containsExactly("bench front by Maren refused: zone front is not resting, or something is latched");

        yard.press("off", 100).ask(Wants.BENCH, "front");
        assertThat(yard.mode("front")).isEqualTo(Mode.BENCH);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);

        yard.scanner().commandDesk().stop();
        yard.scan().ask(Wants.BENCH, "back");
        assertThat(yard.mode("back")).isEqualTo(Mode.STOPPED);
        yard.press("reset", 100);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);
    }

    @Test
    void theKeyArmsItsOwnZoneAndTurnedOffStandsDown() {
        final TestYard yard = TestRigs.ready().set("arm-key", true).scan(60);

        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);
        assertThat(yard.news()).contains("arm by arm-key taken");

        yard.scan(WARNING_MS).set("arm-key", false).scan(60);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aKeyLeftTurnedOnOverAPowerCycleArmsNothing() {
        final TestYard yard = TestRigs.ready().set("arm-key", true).scan(WARNING_MS + 60);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);

        TestRigs.ready(yard.restart()).scan(WARNING_MS);

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void theStandDownButtonHeldDownKeepsEveryZoneAtRest() {
        final TestYard yard = TestRigs.armed().set("off", true).scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);

        yard.scan(100).ask(Wants.ARM, "front").scan(WARNING_MS);

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void somethingThatMovesInAnotherZoneRefusesNothing() {
        final TestYard yard = TestRigs.ready();
        yard.scanner().image().energised[yard.plan().places().output("jet")] = true;

        yard.ask(Wants.ARM, "front");

        assertThat(yard.mode("front")).isEqualTo(Mode.WARNING);
    }

    @Test
    void eachChangeOfModeIsTold() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "front");
        assertThat(yard.news()).contains("zone front RESTING -> WARNING: latches and wishes");

        yard.scan(WARNING_MS);
        assertThat(yard.news()).containsOnlyOnce("zone front WARNING -> ARMED: latches and wishes");
    }

    @Test
    void aRefusalSaysSinceWhenTheModeHasBeenSo() {
        final TestYard yard = TestRigs.armed();
        final long stoodDownAtNs = yard.nowMs() * TestYard.MS;
        yard.scanner().commandDesk().standDown("front");

        yard.scan(2_000);

        assertThat(yard.scanner().whyNot("lid")).anySatisfy(refusal -> {
            assertThat(refusal.rule()).isEqualTo("mode");
            assertThat(refusal.sinceNs()).isEqualTo(stoodDownAtNs);
        });
    }
}
