package slackwater.controller.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.mode.Wall;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;

/** A scan in which nothing changes changes nothing, says when it would matter again, and makes no garbage. */
final class QuietScanTest {
    private static final int WARM_UP = 2_000;
    private static final int MEASURED = 5_000;

    @Test
    void a_quiet_scan_leaves_the_run_as_it_was_and_wakes_at_the_next_deadline() {
        final ScanBench bench = ScanBench.inMidStroke();
        final long sinceMs = bench.nowMs;
        final long wakeNs = bench.wakeNs;
        final List<String> before = cells(bench);
        assertThat(wakeNs).isGreaterThan(sinceMs * ScanBench.MS);
        while (bench.nowMs * ScanBench.MS < wakeNs - ScanBench.PERIOD_MS * ScanBench.MS) {
            bench.step();
            assertThat(bench.wakeNs).isEqualTo(wakeNs);
            assertThat(bench.scan.run().hasChanged()).isFalse();
            assertThat(cells(bench)).isEqualTo(before);
            assertThat(bench.journal).isEmpty();
        }
        bench.scanAt(wakeNs / ScanBench.MS);
        assertThat(bench.scan.run().hasChanged()).isTrue();
    }

    private static List<String> cells(final ScanBench bench) {
        return bench.plan.describe(bench.scan.run()).stream()
                .filter(line -> line.contains(" = "))
                .toList();
    }

    /** Skipping to the wake-up must lead to the very same run as running every scan between. */
    @Test
    void scans_that_are_passed_over_would_have_changed_nothing() {
        final ScanBench stepped = ScanBench.inMidStroke();
        final ScanBench skipped = ScanBench.inMidStroke();
        final long wakeMs = stepped.wakeNs / ScanBench.MS;
        while (stepped.nowMs < wakeMs) {
            stepped.step();
        }
        skipped.scan.passOver(stepped.nowMs * ScanBench.MS - ScanBench.PERIOD_MS * ScanBench.MS);
        skipped.scan.once(stepped.nowMs * ScanBench.MS, Wall.UNKNOWN);
        assertThat(skipped.scan.run().isSameAs(stepped.scan.run())).isTrue();
        assertThat(skipped.journal).isEqualTo(stepped.journal);
    }

    @Test
    void a_quiet_scan_at_rest_allocates_nothing() {
        assertThat(bytesPerScan(ScanBench.resting())).isZero();
    }

    @Test
    void a_quiet_scan_with_outputs_energised_allocates_nothing() {
        final ScanBench bench = ScanBench.inMidStroke();
        assertThat(bench.isOn(ScanBench.LAMP)).isTrue();
        assertThat(bytesPerScan(bench)).isZero();
        assertThat(bench.isOn(ScanBench.LAMP)).isTrue();
    }

    /** Scans so close together that no deadline comes; whole bytes, so that the measurement itself does not count. */
    private static long bytesPerScan(final ScanBench bench) {
        final com.sun.management.ThreadMXBean threads =
                (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        // what a test traces is no part of the scan
        final Scan scan = bench.scan.fork(new Ports(
                bench.pins.lines(),
                bench.store,
                event -> true,
                BoardWatchdog.NONE,
                SampleAge.NONE));
        long nowNs = bench.nowMs * ScanBench.MS;
        for (int i = 0; i < WARM_UP; i++) {
            nowNs += 1_000;
            scan.once(nowNs, Wall.UNKNOWN);
        }
        final long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < MEASURED; i++) {
            nowNs += 1_000;
            scan.once(nowNs, Wall.UNKNOWN);
        }
        return (threads.getCurrentThreadAllocatedBytes() - before) / MEASURED;
    }
}
