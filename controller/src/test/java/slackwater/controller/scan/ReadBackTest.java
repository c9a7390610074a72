package slackwater.controller.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.controller.scan.ScanBench.LAMP;
import static slackwater.controller.scan.ScanBench.LID;

import org.junit.jupiter.api.Test;
import slackwater.controller.pins.Pins.ReadBack;

/** What can be read back is compared, and what cannot be is not judged (S10). */
final class ReadBackTest {
    private static void rest(final ScanBench bench) {
        bench.pins.lines().set(ScanBench.LOOP, false);
        bench.step();
        bench.pins.lines().set(ScanBench.LOOP, true);
    }

    @Test
    void a_welded_relay_rests_all_latches_and_stops_the_pulses_but_the_board_is_still_fed() {
        final ScanBench bench = ScanBench.inMidStroke();
        bench.pins.lines().setReadBack(LAMP, ReadBack.ENERGISED);
        bench.scanFor(1_000);
        assertThat(bench.isFaulted()).isFalse();
        rest(bench);
        bench.scanFor(40);
        assertThat(bench.isFaulted()).as("still settling").isFalse();
        bench.step();
        assertThat(bench.isFaulted()).isTrue();
        assertThat(bench.told()).contains("fault of porch latched: lamp is energised although it was put to rest");

        final long edges = bench.edges();
        final int fed = bench.boardFed[0];
        final long beats = bench.scan.heartbeat().beats();
        bench.scanFor(1_000);
        assertThat(bench.edges()).isEqualTo(edges);
        assertThat(bench.boardFed[0]).isEqualTo(fed + 100);
        assertThat(bench.scan.heartbeat().beats())
                .as("nor does the supervisor end the program, which would find the same pin at its next start")
                .isEqualTo(beats + 100);
    }

    @Test
    void a_welded_relay_puts_the_others_to_rest_too() {
        final ScanBench bench = ScanBench.armed();
        bench.scan.commandDesk().lockOutOutput("lamp", "Ada");
        bench.step();
        bench.visit();
        assertThat(bench.isOn(LID)).isTrue();
        bench.pins.lines().setReadBack(LAMP, ReadBack.ENERGISED);
        bench.step();
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isFaulted()).isTrue();
        bench.visit();
        bench.scanFor(500);
        assertThat(bench.isOn(LID)).isFalse();
    }

    @Test
    void a_weld_that_remains_latches_again_after_every_reset() {
        final ScanBench bench = ScanBench.armed();
        bench.pins.lines().setReadBack(LAMP, ReadBack.ENERGISED);
        bench.scanFor(1_000);
        bench.reset();
        bench.scanFor(1_000);
        assertThat(bench.isFaulted()).isTrue();
        bench.pins.lines().setReadBack(LAMP, ReadBack.AT_REST);
        bench.reset();
        bench.scanFor(1_000);
        assertThat(bench.isFaulted()).isFalse();
    }

    @Test
    void a_dead_lamp_faults_only_itself() {
        final ScanBench bench = ScanBench.armed();
        bench.pins.lines().setReadBack(LAMP, ReadBack.AT_REST);
        bench.visit();
        bench.scanFor(40);
        assertThat(bench.isOn(LAMP)).isTrue();
        bench.scanFor(20);
        assertThat(bench.told()).contains("fault of lamp latched: lamp stays dead although it was energised");
        assertThat(bench.isOn(LAMP)).isFalse();
        assertThat(bench.isOn(LID)).isTrue();
        assertThat(bench.isFaulted()).isFalse();
        final long edges = bench.edges();
        bench.scanFor(1_000);
        assertThat(bench.isOn(LID)).isTrue();
        assertThat(bench.edges()).isEqualTo(edges + 100);
        assertThat(bench.told().stream().filter(text -> text.contains("stays dead")))
                .hasSize(1);
    }

    /** A pad register that repeats the last write says nothing about the load; such a provider answers UNKNOWN. */
    @Test
    void a_provider_that_only_echoes_changes_nothing() {
        final ScanBench known = ScanBench.armed();
        final ScanBench echo = ScanBench.armed();
        known.pins.lines().setReadBack(LAMP, ReadBack.AT_REST);
        echo.pins.lines().setReadBack(LAMP, ReadBack.UNKNOWN);
        known.visit();
        echo.visit();
        known.scanFor(2_000);
        echo.scanFor(2_000);
        assertThat(echo.isOn(LAMP)).isTrue();
        assertThat(known.isOn(LAMP)).isFalse();
        assertThat(echo.told()).noneMatch(text -> text.contains("fault"));
    }
}
