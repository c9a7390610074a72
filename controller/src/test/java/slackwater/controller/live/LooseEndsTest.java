package slackwater.controller.live;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.model.event.Event;

/** Small parts of the running controller: lateness, time awake, the ring to the journal. */
final class LooseEndsTest {
    private static final long MS = 1_000_000L;

    @Test
    void latenessIsTheStepAboveWhatSoManyScansDidNotExceed() {
        final Lateness lateness = new Lateness();
        for (int scan = 0; scan < 990; scan++) {
            lateness.note(104_000);
        }
        for (int scan = 0; scan < 10; scan++) {
            lateness.note(5 * MS);
        }
        assertThat(lateness.microsAt(500)).isEqualTo(110);
        assertThat(lateness.microsAt(990)).isEqualTo(110);
        assertThat(lateness.microsAt(991)).isEqualTo(5_010);
        assertThat(lateness.text())
                .isEqualTo("1000 scans, late by us: p50 110, p99 110, p99.9 5010, max 5000; 0 missed");
    }

    @Test
    void latenessBeyondTheCountIsItsMaximum() {
        final Lateness lateness = new Lateness();
        lateness.note(3_000 * MS);
        lateness.miss(299);
        assertThat(lateness.microsAt(999)).isEqualTo(3_000_000);
        assertThat(lateness.missed()).isEqualTo(299);
    }

    @Test
    void timeInWhichTheWatcherWasFrozenTooDoesNotCount() {
        final AwakeTime awake = new AwakeTime(1_000, 100);
        assertThat(awake.at(1_100)).isEqualTo(100);
        assertThat(awake.at(1_150)).isEqualTo(150);
        assertThat(awake.at(9_000_000)).as("stopped and continued").isEqualTo(250);
        assertThat(awake.at(9_000_060)).isEqualTo(310);
    }

    @Test
    void theRingGivesBackInOrderAndRefusesWhatFindsNoRoom() {
        final Ring ring = new Ring(2);
        for (int round = 0; round < 3; round++) {
            assertThat(ring.offer(new Event.Dropped(1, round))).isTrue();
            assertThat(ring.offer(new Event.Dropped(2, round))).isTrue();
            assertThat(ring.offer(new Event.Dropped(3, round))).isFalse();
            assertThat(ring.poll()).isEqualTo(new Event.Dropped(1, round));
            assertThat(ring.poll()).isEqualTo(new Event.Dropped(2, round));
            assertThat(ring.poll()).isNull();
        }
    }
}
