package slackwater.controller.mode;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request.Wants;
import slackwater.model.Mode;

/** Resets act on a button's release and clear only what is over; latches are independent of each other (S4, S11). */
class ResetAndTripTest {
    private static TestYard stopped(final TestYard yard) {
        yard.scanner().commandDesk().stop();
        return yard.scan();
    }

    @Test
    void aResetButtonStuckFromPowerUpResetsNothingEvenWhenItLetsGo() {
        final TestYard yard = TestYard.of(TestRigs.TWO_ZONES)
                .set("stop-loop", true)
                .set("reset", true)
                .scan(500);
        stopped(yard).scan(1_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);

        yard.set("reset", false).scan(500);
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);

        yard.press("reset", 100);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aResetActsWhenTheButtonIsLetGoAndNotWhileItIsPressed() {
        final TestYard yard = stopped(TestRigs.ready()).set("reset", true).scan(1_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);

        yard.set("reset", false).scan(30);
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
        yard.scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.news()).contains("reset taken");
    }

    @Test
    void aTouchTooShortToBeProvenResetsNothing() {
        final TestYard yard = stopped(TestRigs.ready()).press("reset", 20).scan(500);

        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
    }

    @Test
    void aStopPressedAgainWhileTheButtonIsHeldIsResetOnlyByTheNextPress() {
        final TestYard yard = TestRigs.ready().set("reset", true).scan(100);
        stopped(yard).set("reset", false).scan(100);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);

        stopped(yard).scan(1_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
    }

    @Test
    void aResetWithTheLoopStillOpenLeavesTheStopLatched() {
        final TestYard yard = TestRigs.ready().set("stop-loop", false).scan(100);
        yard.news();

        yard.press("reset", 100);
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
        assertThat(yard.news()).contains("reset refused: stop loop still open");

        yard.set("stop-loop", true).scan(300);
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
        yard.press("reset", 100);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aStopLoopThatOpensForThreeMillisecondsLatches() {
        final TestYard yard = TestRigs.armed().pulse("stop-loop").scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
        assertThat(yard.mode("back")).isEqualTo(Mode.STOPPED);
        assertThat(yard.news()).contains("stop latched: stop-loop is open");
    }

    @Test
    void aResetNeverTakesALockoutAway() {
        final TestYard yard = TestRigs.ready();
        yard.scanner().commandDesk().lockOutZone("front", "Ole");
        yard.scan().press("reset", 100);

        assertThat(yard.mode("front")).isEqualTo(Mode.LOCKED_OUT);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aTripConcernsItsOwnOutputsAndStaysWhileItsCauseIsThere() {
        final TestYard yard = TestRigs.armed().set("water", false).scan(500);
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.ARMED);
        yard.scan();
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.FAULTED);
        assertThat(yard.outputMode("lid")).isEqualTo(Mode.ARMED);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
        assertThat(yard.refusing("mist")).contains("dry");
        yard.news();

        yard.press("reset", 100);

        assertThat(yard.outputMode("mist")).isEqualTo(Mode.FAULTED);
        assertThat(yard.news()).contains("reset refused: a trip's cause remains");
    }

    @Test
    void aTripWhoseCauseIsGoneStaysUntilAResetAndItsOutputThenAwaitsAnArm() {
        final TestYard yard = TestRigs.armed().set("water", false).scan(600).set("water", true).scan(600);
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.FAULTED);

        yard.press("reset", 100);
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.RESTING);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);

        yard.press("off", 100).ask(Wants.ARM, "front").scan(5_000);
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.ARMED);
    }

    @Test
    void aTripIsNotResetWhileNobodyKnowsWhetherItsCauseIsGone() {
        final TestYard yard = TestRigs.armed().set("water", false).scan(600).set("water", true);
        yard.press("reset", 100);
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.FAULTED);

        yard.scan(300).press("reset", 50);
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.RESTING);
    }

    @Test
    void armingAZoneWithALatchedTripDoesNotArmItsOutputAtTheReset() {
        final TestYard yard = TestRigs.ready().set("water", false).scan(600);
        yard.ask(Wants.ARM, "front").scan(5_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.FAULTED);

        yard.set("water", true).scan(600).press("reset", 100);

        assertThat(yard.outputMode("mist")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aLockedOutputLeavesItsNeighboursArmedAndAwaitsALaterArmAfterItsRelease() {
        final TestYard yard = TestRigs.armed();
        yard.scanner().commandDesk().lockOutOutput("mist", "Ole");
        yard.scan();
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.LOCKED_OUT);
        assertThat(yard.outputMode("lid")).isEqualTo(Mode.ARMED);

        yard.send(Wants.UNLOCK_OUTPUT, "mist", "Ole", TestYard.secretOf("Ole")).scan();
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.RESTING);
        yard.set("path", true).scan(20);
        assertThat(yard.isEnergised("lid")).isTrue();
        assertThat(yard.isEnergised("mist")).isFalse();

        yard.press("off", 100).ask(Wants.ARM, "front").scan(5_000);
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.ARMED);
    }

    private static TestYard jammedInMidStroke() {
        final TestYard yard = TestRigs.armed().set("path", true).scan(500);
        assertThat(yard.isEnergised("lid")).isTrue();
        yard.set("jam", true).scan(200);
        assertThat(yard.refusing("mist")).isEmpty();
        assertThat(yard.news()).contains("trip jammed latched: jam");
        return yard;
    }

    @Test
    void aStrokeBegunUnderATripThatLetsItFinishIsNotCut() {
        final TestYard yard = jammedInMidStroke();
        assertThat(yard.isEnergised("lid")).isTrue();

        yard.scan(1_300 - 10);
        assertThat(yard.isEnergised("lid")).isTrue();
        yard.scan(20);
        assertThat(yard.isEnergised("lid")).isFalse();
        yard.scan();
        assertThat(yard.outputMode("lid")).isEqualTo(Mode.FAULTED);

        yard.set("path", false).scan(15_000).set("path", true).scan(20);
        assertThat(yard.isEnergised("lid")).isFalse();
    }

    @Test
    void aLockoutCutsAStrokeThatATripWouldLetFinish() {
        final TestYard yard = jammedInMidStroke();

        yard.scanner().commandDesk().lockOutOutput("lid", "Ole");
        yard.scan();

        assertThat(yard.isEnergised("lid")).isFalse();
        assertThat(yard.outputMode("lid")).isEqualTo(Mode.LOCKED_OUT);
    }

    @Test
    void aStandDownCutsAStrokeThatATripWouldLetFinish() {
        final TestYard yard = jammedInMidStroke();

        yard.scanner().commandDesk().standDown("front");
        yard.scan();

        assertThat(yard.isEnergised("lid")).isFalse();
    }

    @Test
    void aTripWithNothingBegunRefusesAtOnce() {
        final TestYard yard = TestRigs.armed().set("jam", true).scan(200).set("path", true).scan(100);

        assertThat(yard.isEnergised("lid")).isFalse();
        assertThat(yard.isEnergised("mist")).isTrue();
    }
}
