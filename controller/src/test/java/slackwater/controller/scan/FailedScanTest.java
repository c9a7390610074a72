package slackwater.controller.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.controller.scan.ScanBench.LAMP;
import static slackwater.controller.scan.ScanBench.LID;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.controller.cue.Asking;
import slackwater.controller.cue.CueCode;
import slackwater.controller.cue.Playing;
import slackwater.controller.image.Places;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Cue;

/** Any exception in any step: everything rests, a fault latches, nothing energises again by itself (S9, S2). */
final class FailedScanTest {
    private static void fail() {
        throw new IllegalStateException("torn");
    }

    private static void nothing() {}

    /** The scan that has just been run failed; what follows must be rest. */
    private static void assertRestForGood(final ScanBench bench, final long edgesBefore, final int fedBefore) {
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isOn(LAMP)).isFalse();
        assertThat(bench.isFaulted()).isTrue();
        assertThat(bench.edges()).isEqualTo(edgesBefore);
        assertThat(bench.boardFed[0]).isEqualTo(fedBefore);
        bench.visit();
        bench.scanFor(1_000);
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isOn(LAMP)).isFalse();
        assertThat(bench.isFaulted()).isTrue();
        assertThat(bench.edges()).isEqualTo(edgesBefore);
    }

    @Test
    void a_sample_that_throws_rests_everything_for_good() {
        final ScanBench bench = ScanBench.inMidStroke();
        final long edges = bench.edges();
        final int fed = bench.boardFed[0];
        bench.pins.beforeSample(FailedScanTest::fail);
        bench.step();
        bench.pins.beforeSample(FailedScanTest::nothing);
        assertThat(bench.told())
                .contains("fault of porch latched: a scan failed: java.lang.IllegalStateException: torn");
        assertRestForGood(bench, edges, fed);
    }

    @Test
    void a_sample_age_that_throws_rests_everything_for_good() {
        final ScanBench bench = ScanBench.inMidStroke();
        final long edges = bench.edges();
        final int fed = bench.boardFed[0];
        bench.age = () -> {
            fail();
            return 0;
        };
        bench.step();
        bench.age = () -> 0;
        assertRestForGood(bench, edges, fed);
    }

    @Test
    void a_read_back_that_throws_rests_everything_for_good() {
        final ScanBench bench = ScanBench.inMidStroke();
        final long edges = bench.edges();
        final int fed = bench.boardFed[0];
        bench.pins.beforeReadBack(FailedScanTest::fail);
        bench.step();
        bench.pins.beforeReadBack(FailedScanTest::nothing);
        assertRestForGood(bench, edges, fed);
    }

    @Test
    void a_write_that_throws_once_rests_everything_for_good() {
        final ScanBench bench = ScanBench.armed();
        final long edges = bench.edges();
        final int fed = bench.boardFed[0];
        final int[] writes = new int[1];
        bench.pins.beforeWrite(() -> {
            writes[0]++;
            if (writes[0] == 2) {
                fail();
            }
        });
        bench.visit();
        assertThat(writes[0]).isGreaterThan(2);
        assertRestForGood(bench, edges, fed);
    }

    /** The line cannot be moved; all that is left is the relay, and so no pulse may hold it. */
    @Test
    void a_line_that_cannot_be_written_any_more_leaves_the_others_at_rest_and_the_relay_without_pulses() {
        final ScanBench bench = ScanBench.inMidStroke();
        final long edges = bench.edges();
        bench.pins.breakWrite(LID);
        bench.pins.lines().set(ScanBench.LOOP, false);
        bench.step();
        assertThat(bench.isOn(LAMP)).isFalse();
        assertThat(bench.isFaulted()).isTrue();
        bench.scanFor(1_000);
        assertThat(bench.edges()).isEqualTo(edges);
        assertThat(bench.isOn(LAMP)).isFalse();
        bench.pins.mend();
        bench.step();
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isFaulted()).isTrue();
    }

    @Test
    void a_cue_in_code_that_throws_rests_everything_for_good() {
        final Torn code = new Torn();
        final ScanBench bench = new ScanBench(ScanBench.RIG, ScanBench.SHOW + """

                [cue.torn]
                starts = "path"
                code = "torn"
                """, List.of(code));
        bench.pins.lines().set(ScanBench.LOOP, true);
        bench.scanFor(100);
        bench.arm();
        bench.visit();
        bench.scanFor(100);
        assertThat(bench.isOn(LID)).isTrue();
        final long edges = bench.edges();
        final int fed = bench.boardFed[0];
        code.isBroken = true;
        bench.step();
        assertRestForGood(bench, edges, fed);
    }

    @Test
    void a_store_that_throws_is_told_once_tried_again_and_stops_nothing() {
        final ScanBench bench = ScanBench.inMidStroke();
        final int[] asked = new int[1];
        final LatchStore whole = bench.store;
        bench.store = new LatchStore() {
            @Override
            public Optional<Kept> read() {
                return whole.read();
            }

            @Override
            public void keep(final Kept kept) {
                asked[0]++;
                fail();
            }
        };
        final long beats = bench.scan.heartbeat().beats();
        bench.scan.commandDesk().stop();
        bench.scanFor(50);
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(asked[0]).isEqualTo(5);
        assertThat(bench.told().stream().filter(text -> text.contains("keeping latches")))
                .hasSize(1);
        assertThat(bench.scan.heartbeat().beats()).isEqualTo(beats + 5);
        bench.store = whole;
        bench.step();
        assertThat(whole.read().orElseThrow().latched()).contains("stop");
    }

    @Test
    void a_store_that_is_still_writing_is_asked_again_and_only_its_failure_is_told() {
        final ScanBench bench = ScanBench.inMidStroke();
        final LatchStore whole = bench.store;
        final boolean[] isBroken = new boolean[1];
        bench.store = new LatchStore() {
            @Override
            public Optional<Kept> read() {
                return whole.read();
            }

            @Override
            public void keep(final Kept kept) {
                if (isBroken[0]) {
                    fail();
                }
                throw new LatchStore.NotYetException();
            }
        };
        bench.scan.commandDesk().stop();
        bench.scanFor(50);
        assertThat(bench.told()).noneMatch(text -> text.contains("keeping latches"));
        isBroken[0] = true;
        bench.scanFor(50);
        assertThat(bench.told().stream().filter(text -> text.contains("keeping latches")))
                .hasSize(1);
        bench.store = whole;
        bench.step();
        assertThat(whole.read().orElseThrow().latched()).contains("stop");
    }

    /** The disk is dead for an hour, and somebody presses stop (S22). */
    @Test
    void a_journal_that_throws_stops_neither_the_scan_nor_the_stop() {
        final ScanBench bench = ScanBench.inMidStroke();
        bench.records = event -> {
            throw new IllegalStateException("the disk is gone");
        };
        final long beats = bench.scan.heartbeat().beats();
        bench.pins.lines().set(ScanBench.LOOP, false);
        bench.scanFor(1_000);
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isFaulted()).isFalse();
        assertThat(bench.scan.heartbeat().beats()).isEqualTo(beats + 100);
        bench.records = bench.journal::add;
        bench.step();
        assertThat(bench.told()).anyMatch(text -> text.endsWith("records dropped"));
    }

    @Test
    void a_fault_outlives_a_restart() {
        final ScanBench bench = ScanBench.inMidStroke();
        bench.pins.beforeSample(FailedScanTest::fail);
        bench.step();
        assertThat(bench.store.read().orElseThrow().latched()).contains("fault");
    }

    /** Wishes nothing, and throws once it is told to. */
    private static final class Torn implements CueCode {
        boolean isBroken;

        @Override
        public String word() {
            return "torn";
        }

        @Override
        public Playing compile(final Cue cue, final Places places, final Layout layout, final Numbers draws) {
            return new Playing() {
                @Override
                public void begin(final RunState run, final long start) {}

                @Override
                public boolean goOn(final RunState run, final Asking asking) {
                    if (isBroken) {
                        fail();
                    }
                    return true;
                }

                @Override
                public void end(final RunState run) {}

                @Override
                public int[] outputs() {
                    return new int[0];
                }
            };
        }
    }
}
