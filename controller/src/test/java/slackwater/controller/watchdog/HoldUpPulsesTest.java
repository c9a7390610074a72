package slackwater.controller.watchdog;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slackwater.controller.pins.Gate;
import slackwater.controller.pins.TracedPins;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.HoldUp;

/** The pulses that hold the output supply's relay (S2). */
final class HoldUpPulsesTest {
    private static final long MS = 1_000_000L;
    private static final long DROP_OUT_MS = 400;

    /** One relay and the watchdogs around it. */
    private static final class Bench {
        final TracedPins pins = new TracedPins(0, 1);
        final Gate gate = new Gate(pins, new boolean[1]);
        final int[] fed = new int[1];
        final HoldUpPulses pulses;
        final RunState run;
        final Watchdogs watchdogs;
        final Heartbeat heartbeat = new Heartbeat();

        Bench(final Optional<HoldUp> relay) {
            final Layout layout = new Layout();
            pulses = new HoldUpPulses(relay, layout);
            run = layout.newRun();
            watchdogs = new Watchdogs(pulses, () -> fed[0]++, heartbeat);
        }

        static Bench seen() {
            return new Bench(
                    Optional.of(new HoldUp(OptionalInt.of(12), Duration.ofMillis(DROP_OUT_MS), OptionalInt.of(4))));
        }

        static Bench unseen() {
            return new Bench(
                    Optional.of(new HoldUp(OptionalInt.of(12), Duration.ofMillis(DROP_OUT_MS), OptionalInt.empty())));
        }

        static Bench none() {
            return new Bench(Optional.empty());
        }

        /** A scan that runs these steps. */
        boolean scanAt(final long ms, final List<Step> steps) {
            run.begin(ms * MS);
            watchdogs.proof().begin();
            steps.forEach(watchdogs.proof()::mark);
            pulses.look(run, gate);
            return watchdogs.feed(run, gate);
        }

        boolean wholeScanAt(final long ms) {
            return scanAt(ms, List.of(Step.values()));
        }

        void relayIsClosed(final boolean isClosed) {
            pins.lines().setHoldUpSeenClosed(isClosed);
        }

        long edges() {
            return pins.lines().holdUpEdges();
        }
    }

    @Test
    void each_proved_scan_makes_exactly_one_edge() {
        final Bench bench = Bench.seen();
        for (long scan = 1; scan <= 7; scan++) {
            assertThat(bench.wholeScanAt(scan * 10)).isTrue();
            assertThat(bench.edges()).isEqualTo(scan);
            assertThat(bench.fed[0]).isEqualTo(scan);
            assertThat(bench.heartbeat.beats()).isEqualTo(scan);
        }
        assertThat(bench.pulses.isPulsing(bench.run)).isTrue();
    }

    @Test
    void a_scan_that_misses_any_step_feeds_nothing() {
        for (final Step missing : Step.values()) {
            final Bench bench = Bench.seen();
            bench.wholeScanAt(10);
            final List<Step> steps = List.of(Step.values()).stream()
                    .filter(step -> step != missing)
                    .toList();
            assertThat(bench.scanAt(20, steps)).as("without %s", missing).isFalse();
            assertThat(bench.edges()).isEqualTo(1);
            assertThat(bench.fed[0]).isEqualTo(1);
            assertThat(bench.heartbeat.beats()).isEqualTo(1);
        }
    }

    @Test
    void the_relay_may_have_dropped_exactly_when_its_drop_out_has_passed_since_the_last_edge() {
        final Bench bench = Bench.seen();
        bench.wholeScanAt(10);
        bench.run.begin((10 + DROP_OUT_MS) * MS - 1);
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isFalse();
        bench.run.begin((10 + DROP_OUT_MS) * MS);
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isTrue();
    }

    @Test
    void the_drop_out_counts_from_the_last_edge_and_not_from_the_first() {
        final Bench bench = Bench.seen();
        bench.wholeScanAt(10);
        bench.wholeScanAt(300);
        bench.run.begin((300 + DROP_OUT_MS) * MS - 1);
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isFalse();
        bench.run.begin((300 + DROP_OUT_MS) * MS);
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isTrue();
    }

    @Test
    void scans_that_were_passed_over_would_have_made_edges() {
        final Bench bench = Bench.seen();
        bench.wholeScanAt(10);
        bench.pulses.passOver(bench.run, 500 * MS);
        bench.run.begin((500 + DROP_OUT_MS) * MS - 1);
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isFalse();
        bench.run.begin((500 + DROP_OUT_MS) * MS);
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isTrue();
    }

    @Test
    void before_the_first_pulse_nothing_can_have_dropped() {
        final Bench bench = Bench.seen();
        bench.run.begin(1_000_000 * MS);
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isFalse();
        bench.pulses.passOver(bench.run, 1_000_000 * MS);
        assertThat(bench.pulses.isPulsing(bench.run)).isFalse();
    }

    @Test
    void pulses_begin_only_after_the_relay_was_seen_open() {
        final Bench bench = Bench.seen();
        bench.relayIsClosed(true);
        assertThat(bench.wholeScanAt(10)).isTrue();
        assertThat(bench.edges()).isZero();
        assertThat(bench.pulses.isPulsing(bench.run)).isFalse();
        bench.relayIsClosed(false);
        bench.wholeScanAt(20);
        assertThat(bench.edges()).isEqualTo(1);
    }

    @Test
    void the_drop_test_is_passed_by_open_then_closed_under_pulses() {
        final Bench bench = Bench.seen();
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isFalse();
        bench.wholeScanAt(10);
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isFalse();
        bench.relayIsClosed(true);
        bench.wholeScanAt(20);
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isTrue();
    }

    @Test
    void a_relay_that_is_welded_closed_never_passes_its_drop_test() {
        final Bench bench = Bench.seen();
        bench.relayIsClosed(true);
        for (long scan = 1; scan < 50; scan++) {
            bench.wholeScanAt(scan * 10);
        }
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isFalse();
        assertThat(bench.edges()).isZero();
    }

    @Test
    void a_relay_that_cannot_be_seen_passes_once_it_is_pulsed() {
        final Bench bench = Bench.unseen();
        bench.relayIsClosed(true);
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isFalse();
        bench.wholeScanAt(10);
        assertThat(bench.edges()).isEqualTo(1);
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isTrue();
    }

    @Test
    void withheld_pulses_stay_away_until_they_are_released() {
        final Bench bench = Bench.seen();
        bench.wholeScanAt(10);
        bench.relayIsClosed(true);
        bench.wholeScanAt(20);
        bench.pulses.withhold(bench.run);
        bench.relayIsClosed(false);
        for (long scan = 3; scan < 100; scan++) {
            bench.wholeScanAt(scan * 10);
        }
        assertThat(bench.edges()).isEqualTo(2);
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isFalse();
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isFalse();

        bench.pulses.release(bench.run);
        bench.wholeScanAt(1_000);
        assertThat(bench.edges()).isEqualTo(3);
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isFalse(); // a new test, not the old one's result
        bench.relayIsClosed(true);
        bench.wholeScanAt(1_010);
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isTrue();
    }

    @Test
    void a_reset_needs_every_output_at_rest_and_the_relay_seen_open() {
        final Bench bench = Bench.seen();
        bench.wholeScanAt(10);
        bench.pulses.withhold(bench.run);
        bench.relayIsClosed(true);
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, true)).isFalse();
        bench.relayIsClosed(false);
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, true)).isTrue();
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, false)).isFalse();
    }

    @Test
    void while_pulses_go_on_a_closed_relay_is_right_and_only_rest_is_asked() {
        final Bench bench = Bench.seen();
        bench.wholeScanAt(10);
        bench.relayIsClosed(true);
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, true)).isTrue();
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, false)).isFalse();
    }

    @Test
    void a_relay_that_cannot_be_seen_is_reset_at_rest_alone() {
        final Bench bench = Bench.unseen();
        bench.pulses.withhold(bench.run);
        bench.relayIsClosed(true);
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, true)).isTrue();
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, false)).isFalse();
    }

    @Test
    void a_release_of_pulses_that_go_on_forgets_nothing() {
        final Bench bench = Bench.seen();
        bench.wholeScanAt(10);
        bench.relayIsClosed(true);
        bench.wholeScanAt(20);
        bench.pulses.release(bench.run);
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isTrue();
    }

    @Test
    void a_controller_without_a_relay_is_proved_without_one() {
        final Bench bench = Bench.none();
        assertThat(bench.wholeScanAt(10)).isTrue();
        bench.pulses.withhold(bench.run);
        bench.pulses.release(bench.run);
        bench.pulses.passOver(bench.run, 5);
        bench.run.begin(1_000_000 * MS);
        assertThat(bench.edges()).isZero();
        assertThat(bench.fed[0]).isEqualTo(1);
        assertThat(bench.pulses.isPulsing(bench.run)).isTrue();
        assertThat(bench.pulses.hasPassedDropTest(bench.run)).isTrue();
        assertThat(bench.pulses.mayHaveDropped(bench.run)).isFalse();
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, true)).isTrue();
        assertThat(bench.pulses.mayReset(bench.run, bench.gate, false)).isFalse();
    }
}
