package slackwater.controller.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request.Seen;
import slackwater.controller.command.Request.Wants;
import slackwater.controller.mode.TestRigs;
import slackwater.controller.mode.TestYard;
import slackwater.model.Mode;

/** Rest-ward commands are never held up; requests are bounded, quote what they saw, and lose within a scan (S3, S22). */
class CommandsTest {
    private static final Request JUNK = new Request(Wants.ARM, "nowhere", "nobody", "", new Seen(99, 99));

    @Test
    void aQueueFullOfJunkRefusesMoreCountsItAndDelaysNoStop() {
        final TestYard yard = TestRigs.armed();
        final Commands desk = yard.scanner().commandDesk();
        for (int i = 0; i < Commands.QUEUE_MAX; i++) {
            assertThat(desk.ask(JUNK)).isTrue();
        }
        assertThat(desk.ask(JUNK)).isFalse();
        assertThat(desk.ask(JUNK)).isFalse();
        assertThat(desk.refusedCount()).isEqualTo(2);

        desk.stop();
        yard.scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
        assertThat(yard.isEnergised("air")).isFalse();
    }

    @Test
    void aScanTakesEverythingThatWaitsAndThenThereIsRoomAgain() {
        final TestYard yard = TestRigs.ready();
        final Commands desk = yard.scanner().commandDesk();
        for (int i = 0; i < Commands.QUEUE_MAX; i++) {
            desk.ask(JUNK);
        }
        assertThat(desk.hasNews()).isTrue();

        yard.scan();

        assertThat(desk.hasNews()).isFalse();
        assertThat(yard.news()).hasSize(Commands.QUEUE_MAX);
        for (int i = 0; i < Commands.QUEUE_MAX; i++) {
            assertThat(desk.ask(JUNK)).isTrue();
        }
        assertThat(desk.refusedCount()).isZero();
    }

    @Test
    void everySlotAloneIsNewsUntilItIsTaken() {
        final TestYard yard = TestRigs.ready();
        final Commands desk = yard.scanner().commandDesk();
        assertThat(desk.hasNews()).isFalse();

        desk.stop();
        assertThat(desk.hasNews()).isTrue();
        yard.scan();
        desk.standDown("back");
        assertThat(desk.hasNews()).isTrue();
        yard.scan();
        desk.lockOutOutput("lid", "Ole");
        assertThat(desk.hasNews()).isTrue();
        yard.scan();

        assertThat(desk.hasNews()).isFalse();
    }

    @Test
    void anArmSentBeforeAStopAndArrivingAfterItsResetIsRefused() {
        final TestYard yard = TestRigs.ready();
        final Request early = new Request(Wants.ARM, "front", "Maren", "", yard.seen());
        yard.scanner().commandDesk().stop();
        yard.scan().press("reset", 100);
        yard.news();

        yard.send(early).scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.news())
                .containsExactly("arm front by Maren refused: something has latched since it was sent; "
                        + "look again and ask again");
    }

    @Test
    void anArmSentBeforeAStandDownAndArrivingAfterItIsRefused() {
        final TestYard yard = TestRigs.armed();
        final Request early = new Request(Wants.ARM, "front", "Maren", "", yard.seen());
        yard.scanner().commandDesk().standDown("front");
        yard.scan().send(early).scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);

        final Request beforeTheButton = new Request(Wants.ARM, "front", "Maren", "", yard.seen());
        yard.press("off", 100).send(beforeTheButton).scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);

        yard.set("arm-key", true).scan(60);
        final Request beforeTheKey = new Request(Wants.ARM, "front", "Maren", "", yard.seen());
        yard.set("arm-key", false).scan(60).send(beforeTheKey).scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aButtonHeldDownOutdatesWhatWasAskedOnlyOnce() {
        final TestYard yard = TestRigs.ready().set("off", true).scan(100);
        final long generation = yard.scanner().latchGeneration();

        yard.scan(500);

        assertThat(yard.scanner().latchGeneration()).isEqualTo(generation);
    }

    @Test
    void aRequestForAnEarlierStartIsRefused() {
        final TestYard yard = TestRigs.ready();
        final Seen earlier = new Seen(TestYard.BOOT_ID - 1, yard.scanner().latchGeneration());

        yard.send(new Request(Wants.ARM, "front", "Maren", "", earlier)).scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.news())
                .containsExactly("arm front by Maren refused: it was meant for an earlier start of this controller; "
                        + "look again and ask again");
    }

    @Test
    void aZoneOrOutputThatIsNotHereIsSaid() {
        final TestYard yard = TestRigs.ready()
                .send(Wants.ARM, "porch", "Maren", "")
                .send(Wants.UNLOCK_OUTPUT, "gull", "Maren", TestYard.secretOf("Maren"))
                .scan();

        assertThat(yard.news())
                .containsExactly(
                        "arm porch by Maren refused: no zone here is called porch",
                        "unlock output gull by Maren refused: no output here is called gull");
    }

    @Test
    void withinOneScanStopWinsOverAnArmInWhateverOrderTheyCame() {
        final TestYard yard = TestRigs.ready().send(Wants.ARM, "front", "Maren", "");
        yard.scanner().commandDesk().stop();
        yard.scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);
        yard.press("reset", 100).scan(6_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
    }

    @Test
    void withinOneScanALockoutWinsOverAnArm() {
        final TestYard yard = TestRigs.ready().send(Wants.ARM, "front", "Maren", "");
        yard.scanner().commandDesk().lockOutZone("front", "Ole");
        yard.scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.LOCKED_OUT);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);
    }

    @Test
    void withinOneScanAStandDownWinsOverAnArmWhetherTheZoneRestedOrNot() {
        for (final TestYard yard : java.util.List.of(TestRigs.ready(), TestRigs.armed())) {
            yard.send(Wants.ARM, "front", "Maren", "");
            yard.scanner().commandDesk().standDown("front");
            yard.scan();

            assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        }
    }

    @Test
    void standDownsOfSeveralZonesInOneScanAreAllTaken() {
        final TestYard yard = TestRigs.armed();
        final Commands desk = yard.scanner().commandDesk();
        desk.standDown("front");
        desk.standDown("back");
        desk.standDown("front");

        yard.scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);
    }

    @Test
    void aStandDownConcernsOnlyItsZone() {
        final TestYard yard = TestRigs.armed();
        yard.scanner().commandDesk().standDown("back");
        yard.scan();

        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
    }

    @Test
    void lockoutsOfSeveralPeopleInOneScanAreAllKept() {
        final TestYard yard = TestRigs.ready();
        final Commands desk = yard.scanner().commandDesk();
        desk.lockOutZone("front", "Maren");
        desk.lockOutZone("front", "Ole");
        desk.lockOutZone("front", "Maren");
        desk.lockOutOutput("jet", "Ole");
        yard.scan();

        final var kept = yard.store().read().orElseThrow().lockouts();
        assertThat(kept.get("zone front")).containsExactly("Maren", "Ole");
        assertThat(kept.get("output jet")).containsExactly("Ole");
        yard.send(Wants.UNLOCK_ZONE, "front", "Maren", TestYard.secretOf("Maren")).scan();
        assertThat(yard.mode("front")).as("Ole is still there").isEqualTo(Mode.LOCKED_OUT);
    }

    @Test
    void seventyPeopleLockAZoneOutAndNoLockIsLost() {
        final TestYard yard = TestRigs.ready();
        for (int i = 0; i < 70; i++) {
            yard.scanner().commandDesk().lockOutZone("front", "person " + i);
        }
        yard.scan();
        for (int i = 0; i < 70; i++) {
            final String person = "person " + i;
            yard.send(Wants.UNLOCK_ZONE, "front", person, TestYard.secretOf(person)).scan();
            assertThat(yard.mode("front")).as("after %s", person).isEqualTo(Mode.LOCKED_OUT);
        }
        assertThat(yard.news())
                .contains("unlock zone front by person 62 taken")
                .contains("unlock zone front by person 63 refused: too many people hold locks to tell yours apart; "
                        + "use the key override");

        yard.send(Wants.UNLOCK_ZONE, "front", "person 69", TestYard.OVERRIDE).scan();

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.news())
                .contains("lockout of front cleared by key override, asked for by person 69");
    }

    @Test
    void aLockComesOffOnlyWithTheSecretOfThePersonWhoPutItOn() {
        final TestYard yard = TestRigs.ready();
        yard.scanner().commandDesk().lockOutOutput("lid", "Ole");
        yard.scan();
        yard.news();

        yard.send(Wants.UNLOCK_OUTPUT, "lid", "Ole", "a guess").scan();
        yard.send(Wants.UNLOCK_OUTPUT, "lid", "Ole", TestYard.secretOf("Maren")).scan();
        yard.send(Wants.UNLOCK_OUTPUT, "lid", "Maren", TestYard.secretOf("Maren")).scan();
        assertThat(yard.news())
                .containsExactly(
                        "unlock output lid by Ole refused: a lock comes off with the secret of the person "
                                + "who put it on",
                        "unlock output lid by Ole refused: a lock comes off with the secret of the person "
                                + "who put it on",
                        "unlock output lid by Maren refused: Maren holds no lock there");
        assertThat(yard.outputMode("lid")).isEqualTo(Mode.LOCKED_OUT);

        yard.send(Wants.UNLOCK_OUTPUT, "lid", "Ole", TestYard.secretOf("Ole")).scan();
        assertThat(yard.outputMode("lid")).isEqualTo(Mode.RESTING);
        assertThat(yard.news())
                .containsExactly("lockout of lid cleared by Ole", "unlock output lid by Ole taken");
    }

    @Test
    void theOverrideTakesEveryonesLockOffAnOutputAndIsJournalled() {
        final TestYard yard = TestRigs.ready();
        yard.scanner().commandDesk().lockOutOutput("lid", "Ole");
        yard.scanner().commandDesk().lockOutOutput("lid", "Maren");
        yard.scan();
        yard.news();

        yard.send(Wants.UNLOCK_OUTPUT, "lid", "Tom", TestYard.OVERRIDE).scan();

        assertThat(yard.outputMode("lid")).isEqualTo(Mode.RESTING);
        assertThat(yard.news()).contains("lockout of lid cleared by key override, asked for by Tom");
    }

    @Test
    void anUnlockOfWhatNobodyLockedIsRefused() {
        final TestYard yard = TestRigs.ready()
                .send(Wants.UNLOCK_ZONE, "front", "Ole", TestYard.secretOf("Ole"))
                .send(Wants.UNLOCK_OUTPUT, "lid", "Ole", TestYard.OVERRIDE)
                .scan();

        assertThat(yard.news())
                .containsExactly(
                        "unlock zone front by Ole refused: Ole holds no lock there",
                        "unlock output lid by Ole refused: Ole holds no lock there");
    }

    @Test
    void aNameThatIsNotInTheRigIsAProgrammersMistake() {
        final Commands desk = TestRigs.ready().scanner().commandDesk();

        assertThatThrownBy(() -> desk.standDown("porch")).hasMessageContaining("zone=porch");
        assertThatThrownBy(() -> desk.lockOutOutput("gull", "Ole")).hasMessageContaining("output=gull");
    }
}
