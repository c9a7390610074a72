package slackwater.controller.watchdog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import slackwater.controller.pins.Gate;
import slackwater.controller.pins.TracedPins;

/** The second thread with the one-way gate (S8), before the scan that it watches. */
@Timeout(20)
final class ScanSupervisorTest {
    private static final long PATIENCE_NS = 100;
    private static final long BOUND_MS = 200;

    private final TracedPins pins = new TracedPins(0, 2);
    private final Gate gate = new Gate(pins, new boolean[2]);
    private final Heartbeat heartbeat = new Heartbeat();
    private final List<String> halted = Collections.synchronizedList(new ArrayList<>());
    private final ScanSupervisor supervisor = new ScanSupervisor(
            heartbeat, gate, halted::add, new ScanSupervisor.Bounds(PATIENCE_NS, BOUND_MS));

    @BeforeEach
    void energise() {
        gate.energise(0);
        pins.takeWrites();
    }

    @Test
    void it_leaves_a_scan_alone_that_goes_on_beating() {
        for (long now = 0; now < 50 * PATIENCE_NS; now += PATIENCE_NS) {
            heartbeat.beat();
            assertThat(supervisor.look(now)).isFalse();
        }
        assertThat(gate.isClosed()).isFalse();
        assertThat(pins.takeWrites()).isEmpty();
        assertThat(halted).isEmpty();
        assertThat(pins.lines().holdUpEdges()).isZero();
    }

    @Test
    void it_acts_exactly_when_its_patience_is_over() {
        heartbeat.beat();
        assertThat(supervisor.look(1_000)).isFalse();
        assertThat(supervisor.look(1_000 + PATIENCE_NS - 1)).isFalse();
        assertThat(gate.isClosed()).isFalse();
        assertThat(supervisor.look(1_000 + PATIENCE_NS)).isTrue();
        assertThat(gate.isClosed()).isTrue();
        assertThat(pins.takeWrites()).containsExactly("0=low", "1=low");
        assertThat(halted).containsExactly("no proved scan for 100 ns");
    }

    @Test
    void a_scan_that_never_beats_at_all_is_stuck_too() {
        assertThat(supervisor.look(1_000)).isFalse();
        assertThat(supervisor.look(1_000 + PATIENCE_NS - 1)).isFalse();
        assertThat(supervisor.look(1_000 + PATIENCE_NS)).isTrue();
    }

    @Test
    void it_acts_once_and_a_late_beat_changes_nothing() {
        supervisor.look(0);
        supervisor.look(PATIENCE_NS);
        assertThat(supervisor.look(PATIENCE_NS + 1)).isTrue();
        heartbeat.beat();
        assertThat(supervisor.look(5 * PATIENCE_NS)).isTrue();
        assertThat(supervisor.look(9 * PATIENCE_NS)).isTrue();
        assertThat(halted).hasSize(1);
        assertThat(gate.isClosed()).isTrue();
    }

    @Test
    void it_feeds_nothing() {
        supervisor.look(0);
        supervisor.look(PATIENCE_NS);
        assertThat(heartbeat.beats()).isZero();
        assertThat(pins.lines().holdUpEdges()).isZero();
    }

    @Test
    void it_halts_within_its_bound_even_if_the_rest_write_never_comes_back() {
        final CountDownLatch never = new CountDownLatch(1);
        pins.beforeWrite(() -> waitFor(never));
        supervisor.look(0);
        final long beganNs = System.nanoTime();
        assertThat(supervisor.look(PATIENCE_NS)).isTrue();
        final long tookMs = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - beganNs);
        assertThat(halted).hasSize(1);
        assertThat(tookMs).isBetween(BOUND_MS / 2, BOUND_MS + 5_000);
        never.countDown();
    }

    @Test
    void it_halts_although_every_rest_write_throws() {
        pins.breakWrite(0);
        pins.breakWrite(1);
        supervisor.look(0);
        assertThat(supervisor.look(PATIENCE_NS)).isTrue();
        assertThat(halted).hasSize(1);
    }

    @Test
    void it_halts_although_it_is_interrupted_while_it_waits() {
        final CountDownLatch never = new CountDownLatch(1);
        pins.beforeWrite(() -> waitFor(never));
        supervisor.look(0);
        Thread.currentThread().interrupt();
        assertThat(supervisor.look(PATIENCE_NS)).isTrue();
        assertThat(Thread.interrupted()).isTrue();
        assertThat(halted).hasSize(1);
        never.countDown();
    }

    @Test
    void a_rest_writer_that_hangs_does_not_keep_the_process_alive() {
        final CountDownLatch never = new CountDownLatch(1);
        final List<Boolean> isDaemon = Collections.synchronizedList(new ArrayList<>());
        pins.beforeWrite(() -> {
            isDaemon.add(Thread.currentThread().isDaemon());
            waitFor(never);
        });
        supervisor.look(0);
        supervisor.look(PATIENCE_NS);
        assertThat(isDaemon).containsExactly(true);
        never.countDown();
    }

    private static void waitFor(final CountDownLatch latch) {
        try {
            latch.await();
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
