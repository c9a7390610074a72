package slackwater.controller.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.mode.Wall;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;
import slackwater.model.event.Event;

/** A copy and then a step equals a step: the search stands on it (S21). */
final class ForkTest {
    private static final int SCANS = 2_500;

    /** What the world does at one scan of the evening: passers-by, a stop, a reset, the key. */
    private static void world(final VirtualPins lines, final int scan) {
        lines.set(ScanBench.PATH, scan % 300 > 280);
        lines.set(ScanBench.LOOP, scan < 1_200 || scan > 1_300);
        lines.set(ScanBench.RESET, scan > 1_400 && scan < 1_430);
        lines.set(ScanBench.KEY, scan < 1_350 || scan > 1_500);
        if (scan == 2_200) {
            lines.pulse(ScanBench.LOOP);
        }
    }

    @Test
    void a_fork_at_any_moment_goes_the_very_way_of_the_scan_that_it_was_taken_from() {
        for (int forkAt = 0; forkAt < SCANS; forkAt += 97) {
            final ScanBench bench = ScanBench.armed();
            long nowNs = bench.nowMs * ScanBench.MS;
            for (int scan = 0; scan < forkAt; scan++) {
                nowNs += 10 * ScanBench.MS;
                world(bench.pins.lines(), scan);
                bench.scan.once(nowNs, Wall.UNKNOWN);
            }
            final VirtualPins lines = bench.pins.lines().copy();
            final List<Event> journal = new ArrayList<>();
            final Scan fork = bench.scan.fork(new Ports(
                    lines,
                    LatchStore.inMemory(Kept.NOTHING),
                    journal::add,
                    BoardWatchdog.NONE,
                    SampleAge.NONE));
            bench.journal.clear();
            for (int scan = forkAt; scan < SCANS; scan++) {
                nowNs += 10 * ScanBench.MS;
                world(bench.pins.lines(), scan);
                world(lines, scan);
                assertThat(fork.once(nowNs, Wall.UNKNOWN)).isEqualTo(bench.scan.once(nowNs, Wall.UNKNOWN));
                assertThat(fork.run().isSameAs(bench.scan.run()))
                        .as("forked at %d, scan %d", forkAt, scan)
                        .isTrue();
            }
            assertThat(journal).isEqualTo(bench.journal);
            assertThat(bench.plan.describe(fork.run())).isEqualTo(bench.plan.describe(bench.scan.run()));
            assertThat(lines.holdUpEdges()).isEqualTo(bench.edges());
            assertThat(lines.isOutputHigh(ScanBench.LID)).isEqualTo(bench.isOn(ScanBench.LID));
        }
    }

    @Test
    void what_a_fork_does_is_not_seen_where_it_came_from() {
        final ScanBench bench = ScanBench.inMidStroke();
        final List<String> before = bench.plan.describe(bench.scan.run());
        final VirtualPins lines = bench.pins.lines().copy();
        final Scan fork = bench.scan.fork(new Ports(
                lines,
                LatchStore.inMemory(Kept.NOTHING),
                event -> true,
                BoardWatchdog.NONE,
                SampleAge.NONE));
        fork.commandDesk().stop();
        fork.once(bench.nowMs * ScanBench.MS + 10, Wall.UNKNOWN);
        assertThat(lines.isOutputHigh(ScanBench.LID)).isFalse();
        assertThat(bench.plan.describe(bench.scan.run())).isEqualTo(before);
        assertThat(bench.isOn(ScanBench.LID)).isTrue();
        assertThat(bench.scan.image().energised[ScanBench.LID]).isTrue();
    }
}
