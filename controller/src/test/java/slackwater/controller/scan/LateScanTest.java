package slackwater.controller.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.controller.scan.ScanBench.LAMP;
import static slackwater.controller.scan.ScanBench.LID;
import static slackwater.controller.scan.ScanBench.LOOP;
import static slackwater.controller.scan.ScanBench.MS;
import static slackwater.controller.scan.ScanBench.PERIOD_MS;

import org.junit.jupiter.api.Test;

/** A scan that comes too late commits rests only (S9); one that comes after the relay's drop-out rests first (S2). */
final class LateScanTest {
    private static final long HALF_PERIOD_NS = PERIOD_MS * MS / 2;

    @Test
    void samples_that_are_half_a_period_old_still_start_an_output() {
        final ScanBench bench = ScanBench.armed();
        bench.age = () -> HALF_PERIOD_NS;
        bench.visit();
        assertThat(bench.isOn(LID)).isTrue();
    }

    @Test
    void samples_older_than_half_a_period_start_nothing_and_feed_nothing() {
        final ScanBench bench = ScanBench.armed();
        final long edges = bench.edges();
        final int fed = bench.boardFed[0];
        final long beats = bench.scan.heartbeat().beats();
        bench.age = () -> HALF_PERIOD_NS + 1;
        bench.visit();
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isOn(LAMP)).isFalse();
        assertThat(bench.told()).contains("lid ended by its late scan");
        assertThat(bench.edges()).isEqualTo(edges);
        assertThat(bench.boardFed[0]).isEqualTo(fed);
        assertThat(bench.scan.heartbeat().beats()).isEqualTo(beats);
    }

    @Test
    void a_late_scan_still_rests_what_it_must_and_leaves_on_what_was_on() {
        final ScanBench bench = ScanBench.inMidStroke();
        bench.age = () -> HALF_PERIOD_NS + 1;
        bench.step();
        assertThat(bench.isOn(LID)).isTrue();
        bench.pins.lines().set(LOOP, false);
        bench.step();
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isOn(LAMP)).isFalse();
    }

    @Test
    void no_scan_for_just_less_than_the_drop_out_changes_nothing() {
        final ScanBench bench = ScanBench.inMidStroke();
        bench.scanAt(bench.nowMs + ScanBench.DROP_OUT_MS - 1);
        assertThat(bench.isFaulted()).isFalse();
        assertThat(bench.isOn(LID)).isTrue();
    }

    /** A process that was frozen in mid-stroke: the relay has let go, and must not find the pins still high. */
    @Test
    void no_scan_for_the_drop_out_first_rests_everything_then_latches_and_never_fires_again() {
        final ScanBench bench = ScanBench.inMidStroke();
        final long edges = bench.edges();
        final String[] first = new String[1];
        bench.pins.beforeSample(() -> first[0] = String.valueOf(bench.pins.takeWrites()));
        bench.scanAt(bench.nowMs + ScanBench.DROP_OUT_MS);
        assertThat(first[0]).as("written before anything is sampled").isEqualTo("[0=low, 1=low]");
        assertThat(bench.isFaulted()).isTrue();
        assertThat(bench.told())
                .contains("fault of porch latched: no scan for longer than the hold-up relay's drop-out");

        bench.pins.beforeSample(() -> {});
        for (int scan = 0; scan < 500; scan++) {
            bench.step();
            assertThat(bench.isOn(LID) || bench.isOn(LAMP)).isFalse();
        }
        assertThat(bench.edges()).isEqualTo(edges);

        bench.reset();
        bench.scanFor(1_000);
        assertThat(bench.isFaulted()).isFalse();
        assertThat(bench.edges()).isGreaterThan(edges);
        assertThat(bench.isOn(LID)).isFalse();
        bench.turnKey();
        bench.visit();
        assertThat(bench.isOn(LID)).isTrue();
    }

    @Test
    void missed_scans_are_never_caught_up() {
        final ScanBench bench = ScanBench.inMidStroke();
        final long edges = bench.edges();
        bench.scanAt(bench.nowMs + 200);
        assertThat(bench.edges()).isEqualTo(edges + 1);
    }
}
