package slackwater.controller.mode;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request.Wants;
import slackwater.model.Mode;
import slackwater.model.event.Event;

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
        final TestYard yard = TestRigs.armed()
                .set("water", false)
                .scan(600)
                .set("water", true)
                .scan(600);
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
        final TestYard yard =
                TestRigs.armed().set("jam", true).scan(200).set("path", true).scan(100);

        assertThat(yard.isEnergised("lid")).isFalse();
        assertThat(yard.isEnergised("mist")).isTrue();
    }

    @Test
    void onlyAResetButtonResets() {
        final TestYard yard = stopped(TestRigs.ready());

        for (final String input : new String[] {"path", "curtain", "off", "arm-key", "jam"}) {
            yard.press(input, 600);
            assertThat(yard.mode("front")).as(input).isEqualTo(Mode.STOPPED);
        }
    }

    @Test
    void aRefusalByATripNamesTheTripItsCauseAndSinceWhen() {
        final TestYard yard = TestRigs.ready().set("jam", true).scan(30);
        for (int scans = 0; scans < 100 && !yard.refusing("lid").contains("jammed"); scans++) {
            yard.scan();
        }
        final long trippedAtNs = yard.scanner().run().atNs();

        yard.scan(1_000);

        assertThat(yard.scanner().whyNot("lid")).anySatisfy(refusal -> {
            assertThat(refusal.rule()).isEqualTo("jammed");
            assertThat(refusal.observed()).isEqualTo("it has been tripped by jam");
            assertThat(refusal.sinceNs()).isEqualTo(trippedAtNs);
        });
    }

    @Test
    void aTripThatWasResetIsNotKeptOverARestart() {
        final TestYard yard = TestRigs.ready().set("water", false).scan(600);
        assertThat(yard.store().read().orElseThrow().latched()).containsExactly("trip dry");

        yard.set("water", true).scan(600).press("reset", 100);
        assertThat(yard.store().read().orElseThrow().latched()).isEmpty();

        assertThat(yard.restart().scan().outputMode("mist")).isEqualTo(Mode.RESTING);
    }

    /** The first trip of the file has the number 0: a stroke that it forbids is not taken for one that may finish. */
    @Test
    void aStrokeUnderATripThatCutsIsFaultedInTheScanThatTrips() {
        final TestYard yard =
                TestRigs.armed().set("water", false).scan(400).set("path", true).scan(100);
        assertThat(yard.isEnergised("mist")).isTrue();
        assertThat(yard.outputMode("mist")).isEqualTo(Mode.ARMED);

        yard.scan();

        assertThat(yard.outputMode("mist")).isEqualTo(Mode.FAULTED);
        assertThat(yard.isEnergised("mist")).isFalse();
    }

    @Test
    void aTripOfAnotherControllersOutputsIsNotThisOnes() {
        final TestYard yard = TestYard.of("""
                [controller.shed]
                board = "pi-4"

                [controller.pond]
                board = "pi-4"

                [zone.front]
                [zone.back]

                [input.water]
                kind = "level"
                zone = "back"
                controller = "pond"

                [output.glow]
                kind = "lamp"
                zone = "front"
                controller = "shed"

                [output.mist]
                kind = "mister"
                zone = "back"
                controller = "pond"
                longest-on = "30 s"

                [trip.dry]
                outputs = ["mist"]
                when = ["not water"]
                begun = "rest"
                """);

        yard.scan(2_000);

        assertThat(yard.plan().places().outputs())
                .extracting(output -> output.name())
                .containsExactly("glow");
        assertThat(yard.store().read().orElseThrow().latched()).isEmpty();
    }

    @Test
    void aFaultEndsTheWishOfItsZonesSoThatAResetArmsNothing() {
        final TestYard zone = TestRigs.armed();
        zone.plan()
                .latches()
                .faultZone(
                        zone.scanner().run(),
                        zone.scanner().image(),
                        zone.plan().places().zone("back"),
                        "");
        zone.scan().press("reset", 100).scan(9_000);
        assertThat(zone.mode("back")).isEqualTo(Mode.RESTING);
        assertThat(zone.mode("front")).isEqualTo(Mode.ARMED);

        final TestYard whole = TestRigs.armed();
        whole.plan()
                .latches()
                .faultController(whole.scanner().run(), whole.scanner().image(), "");
        whole.scan();
        assertThat(whole.mode("front")).isEqualTo(Mode.FAULTED);
        whole.scan(500).press("reset", 100).scan(9_000);
        assertThat(whole.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(whole.mode("back")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aFaultOfTheControllerIsNotResetWhileAnythingIsStillEnergised() {
        final TestYard yard = TestRigs.ready();
        yard.plan()
                .latches()
                .faultController(yard.scanner().run(), yard.scanner().image(), "a test");
        yard.scan().set("reset", true).scan(300).set("reset", false);
        for (int scans = 0; scans < 30; scans++) {
            yard.scanner().image().energised[yard.plan().places().output("glow")] = true;
            yard.scan();
        }

        assertThat(yard.mode("front")).isEqualTo(Mode.FAULTED);
        assertThat(yard.news())
                .contains("reset refused: the hold-up relay has not been seen open with every output at rest");
    }

    @Test
    void anOutputThatWasArmedWhileLockedOutMovesOnlyAfterALaterArm() {
        final TestYard yard = TestRigs.ready();
        yard.scanner().commandDesk().lockOutOutput("mist", "Ole");
        yard.scan().ask(Wants.ARM, "front").scan(9_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);

        yard.send(Wants.UNLOCK_OUTPUT, "mist", "Ole", TestYard.secretOf("Ole")).scan();

        assertThat(yard.outputMode("mist")).isEqualTo(Mode.RESTING);
    }

    @Test
    void anOutputThatWasArmedWhileFaultedMovesOnlyAfterALaterArm() {
        final TestYard yard = TestRigs.ready();
        final int lid = yard.plan().places().output("lid");
        yard.plan().latches().faultOutput(yard.scanner().run(), yard.scanner().image(), lid, "a test");
        yard.scan().ask(Wants.ARM, "front").scan(9_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
        assertThat(yard.outputMode("lid")).isEqualTo(Mode.FAULTED);

        yard.press("reset", 100);

        assertThat(yard.outputMode("lid")).isEqualTo(Mode.RESTING);
    }

    @Test
    void whatLatchesIsToldByItsName() {
        final TestYard yard = TestRigs.ready();
        final var run = yard.scanner().run();
        final var image = yard.scanner().image();
        yard.plan().latches().faultZone(run, image, yard.plan().places().zone("back"), "a test");
        yard.plan().latches().faultOutput(run, image, yard.plan().places().output("lid"), "a test");
        assertThat(image.events())
                .extracting(Event::text)
                .contains("fault of zone back latched: a test", "fault of lid latched: a test");

        yard.scanner().commandDesk().lockOutOutput("jet", "Ole");
        yard.scanner().commandDesk().lockOutZone("front", "Ole");
        yard.scan();

        assertThat(yard.news())
                .contains(
                        "lockout of jet latched: somebody works there",
                        "lockout of zone front latched: somebody works there");
    }
}
