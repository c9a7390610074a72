package slackwater.controller.latch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.mode.TestRigs;
import slackwater.controller.mode.TestYard;
import slackwater.controller.run.RunState;
import slackwater.model.Mode;

/** The mode of an output for every combination of what is latched and wished: the most restrictive of them (S4). */
class OutputModeTest {
    private static final int STOP = 1;
    private static final int CONTROLLER_FAULT = 2;
    private static final int ZONE_FAULT = 4;
    private static final int ZONE_LOCKOUT = 8;
    private static final int OUTPUT_FAULT = 16;
    private static final int OUTPUT_LOCKOUT = 32;
    private static final int AWAITS_ARM = 64;
    private static final int ALL = 128;

    private final TestYard yard = TestYard.of(TestRigs.TWO_ZONES);
    private final Latches latches = yard.plan().latches();
    private final Places places = yard.plan().places();
    private final int lid = places.output("lid");
    private final int air = places.output("air");
    private final int jet = places.output("jet");

    private static boolean has(final int set, final int member) {
        return (set & member) != 0;
    }

    private RunState runWith(final int set, final Wish wish) {
        final RunState run = yard.plan().newRun();
        run.begin(0);
        final Image image = places.newImage();
        if (has(set, STOP)) {
            latches.stop(run, image, "");
        }
        if (has(set, CONTROLLER_FAULT)) {
            latches.faultController(run, image, "");
        }
        if (has(set, ZONE_FAULT)) {
            latches.faultZone(run, image, 0, "");
        }
        if (has(set, ZONE_LOCKOUT)) {
            latches.lockOutZone(run, image, 0, 1);
        }
        if (has(set, OUTPUT_FAULT)) {
            latches.faultOutput(run, image, lid, "");
        }
        if (has(set, OUTPUT_LOCKOUT)) {
            latches.lockOutOutput(run, image, lid, 1);
        }
        latches.arm(run, 0, 0);
        if (has(set, AWAITS_ARM)) {
            latches.awaitArm(run, new int[] {lid});
        }
        wish(run, wish);
        return run;
    }

    private void wish(final RunState run, final Wish wish) {
        switch (wish) {
            case RESTING -> latches.rest(run, 0);
            case BENCH -> latches.bench(run, 0);
            case WARNING -> latches.warn(run, 0, 1);
            case ARMED -> assertThat(latches.wish(run, 0)).isEqualTo(Wish.ARMED);
        }
    }

    private static Mode expected(final int set, final Wish wish) {
        if (has(set, STOP)) {
            return Mode.STOPPED;
        }
        if (has(set, CONTROLLER_FAULT | ZONE_FAULT | OUTPUT_FAULT)) {
            return Mode.FAULTED;
        }
        if (has(set, ZONE_LOCKOUT | OUTPUT_LOCKOUT)) {
            return Mode.LOCKED_OUT;
        }
        if (wish == Wish.ARMED && has(set, AWAITS_ARM)) {
            return Mode.RESTING;
        }
        return Mode.valueOf(wish.name());
    }

    @Test
    void everyCombinationGivesTheMostRestrictive() {
        for (int set = 0; set < ALL; set++) {
            for (final Wish wish : Wish.values()) {
                final RunState run = runWith(set, wish);

                assertThat(latches.outputMode(run, lid)).as("%s %s", set, wish).isEqualTo(expected(set, wish));
                final int zoneOnly = set & ~(OUTPUT_FAULT | OUTPUT_LOCKOUT | AWAITS_ARM);
                assertThat(latches.zoneMode(run, 0)).isEqualTo(expected(zoneOnly, wish));
                assertThat(latches.outputMode(run, air)).as("a neighbour").isEqualTo(expected(zoneOnly, wish));
                final int everywhere = set & (STOP | CONTROLLER_FAULT);
                assertThat(latches.outputMode(run, jet)).isEqualTo(expected(everywhere, Wish.RESTING));
            }
        }
    }

    @Test
    void everyNewLatchRaisesTheGenerationAndAnOldOneDoesNot() {
        final RunState run = runWith(0, Wish.RESTING);
        final Image image = places.newImage();
        long before = latches.generation(run);

        latches.stop(run, image, "");
        assertThat(latches.generation(run)).isEqualTo(++before);
        latches.faultController(run, image, "");
        assertThat(latches.generation(run)).isEqualTo(++before);
        latches.faultZone(run, image, 0, "");
        assertThat(latches.generation(run)).isEqualTo(++before);
        latches.faultOutput(run, image, lid, "");
        assertThat(latches.generation(run)).isEqualTo(++before);
        latches.lockOutZone(run, image, 0, 1);
        assertThat(latches.generation(run)).isEqualTo(++before);
        latches.lockOutOutput(run, image, lid, 1);
        assertThat(latches.generation(run)).isEqualTo(++before);
        latches.tripped(run, image, "dry", new int[] {lid}, "");
        assertThat(latches.generation(run)).isEqualTo(++before);

        latches.stop(run, image, "");
        latches.faultController(run, image, "");
        latches.faultZone(run, image, 0, "");
        latches.faultOutput(run, image, lid, "");
        latches.lockOutZone(run, image, 0, 1);
        latches.lockOutOutput(run, image, lid, 1);
        assertThat(latches.generation(run)).isEqualTo(before);

        latches.lockOutZone(run, image, 0, 3);
        latches.lockOutOutput(run, image, lid, 3);
        assertThat(latches.generation(run)).as("one more person each").isEqualTo(before + 2);
    }

    @Test
    void theSignatureTellsEveryLatchFromEveryOther() {
        final java.util.Set<Long> seen = new java.util.HashSet<>();
        for (int set = 0; set < AWAITS_ARM; set++) {
            seen.add(latches.signature(runWith(set, Wish.RESTING)));
        }
        assertThat(seen).hasSize(AWAITS_ARM);
    }

    @Test
    void theSignatureChangesWhenAPersonTakesTheirLockOff() {
        final RunState run = runWith(ZONE_LOCKOUT | OUTPUT_LOCKOUT, Wish.RESTING);
        final long before = latches.signature(run);

        latches.unlockZone(run, 0, 1);
        final long between = latches.signature(run);
        latches.unlockOutput(run, lid, 1);

        assertThat(between).isNotEqualTo(before);
        assertThat(latches.signature(run)).isNotIn(before, between);
    }

    @Test
    void theAirOfAZoneThatRestsHasNotSettled() {
        final RunState run = runWith(0, Wish.ARMED);
        run.begin(1);
        assertThat(latches.hasAirSettled(run, 0)).isTrue();

        latches.rest(run, 0);

        assertThat(latches.hasAirSettled(run, 0)).isFalse();
    }

    @Test
    void aResetClearsTheFaultOfControllerZoneAndOutput() {
        final RunState run = runWith(CONTROLLER_FAULT | ZONE_FAULT | OUTPUT_FAULT, Wish.RESTING);

        latches.reset(run, true);

        assertThat(latches.isControllerFaulted(run)).isFalse();
        assertThat(latches.isZoneFaulted(run, 0)).isFalse();
        assertThat(latches.isOutputFaulted(run, lid)).isFalse();
    }
}
