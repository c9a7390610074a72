package slackwater.controller.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** The three timers against the timing tables of IEC 61131-3, row by row (handbook 6.1, 6.2 and 6.3). */
final class IecTimingTest {
    private static final long PT_NS = 5_000_000_000L;
    private static final String DUE = "block due ";

    private interface Block {
        boolean update(RunState run, boolean input);
    }

    /** How long the block's timer has counted, as far as its deadline tells: at most PT, 0 when not started. */
    private static long elapsedNs(final Layout layout, final RunState run) {
        final String due = layout.describe(run).stream()
                .filter(line -> line.startsWith(DUE))
                .findFirst()
                .orElseThrow()
                .substring(DUE.length());
        return due.equals("never") ? 0 : Math.min(PT_NS, PT_NS - Long.parseLong(due.replace(" ns", "")));
    }

    private static long ns(final String seconds) {
        return new BigDecimal(seconds).movePointRight(9).longValueExact();
    }

    private static void follow(
            final Layout layout, final Block block, final boolean isElapsedKeptAtRest, final String table) {
        final RunState run = layout.newRun();
        table.lines().forEach(row -> {
            final String[] cell = row.split(" ");
            run.begin(ns(cell[0]));
            final boolean q = block.update(run, cell[1].equals("1"));
            assertThat(q).as("Q at %s s", cell[0]).isEqualTo(cell[2].equals("1"));
            if (isElapsedKeptAtRest || q) {
                assertThat(elapsedNs(layout, run)).as("ET at %s s", cell[0]).isEqualTo(ns(cell[3]));
            }
        });
    }

    @Test
    void on_delay_follows_handbook_6_1() {
        final Layout layout = new Layout();
        final OnDelay block = new OnDelay(layout, "block", PT_NS);
        follow(layout, block::update, true, """
                0 0 0 0
                1 1 0 0
                3 1 0 2
                5.9 1 0 4.9
                6 1 1 5
                7 1 1 5
                8 0 0 0
                9 0 0 0
                10 1 0 0
                12 1 0 2
                13 0 0 0
                14 0 0 0
                """);
    }

    @Test
    void off_delay_follows_handbook_6_2() {
        final Layout layout = new Layout();
        final OffDelay block = new OffDelay(layout, "block", PT_NS);
        follow(layout, block::update, true, """
                0 0 0 0
                1 1 1 0
                2 1 1 0
                3 0 1 0
                5 0 1 2
                7.9 0 1 4.9
                8 0 0 5
                9 0 0 5
                10 1 1 0
                12 0 1 0
                13.9 0 1 1.9
                14 1 1 0
                16 0 1 0
                20.9 0 1 4.9
                21 0 0 5
                """);
    }

    /** After the pulse the table's ET is a matter of display; the block keeps a deadline only. */
    @Test
    void pulse_follows_handbook_6_3() {
        final Layout layout = new Layout();
        final Pulse block = new Pulse(layout, "block", PT_NS);
        follow(layout, block::update, false, """
                0 0 0 0
                1 1 1 0
                2 0 1 1
                4 1 1 3
                5.9 0 1 4.9
                6 0 0 0
                7 0 0 0
                10 1 1 0
                14.9 1 1 4.9
                15 1 0 5
                17 1 0 5
                18 0 0 0
                20 1 1 0
                24.9 0 1 4.9
                25 0 0 0
                """);
    }

    @Test
    void each_timer_changes_at_its_very_nanosecond() {
        final Layout layout = new Layout();
        final OnDelay on = new OnDelay(layout, "on", PT_NS);
        final OffDelay off = new OffDelay(layout, "off", PT_NS);
        final Pulse pulse = new Pulse(layout, "pulse", PT_NS);
        final RunState run = layout.newRun();
        on.update(run, true);
        off.update(run, true);
        off.update(run, false);
        pulse.update(run, true);

        run.begin(PT_NS - 1);
        assertThat(on.update(run, true)).isFalse();
        assertThat(off.update(run, false)).isTrue();
        assertThat(pulse.update(run, true)).isTrue();

        run.begin(PT_NS);
        assertThat(on.update(run, true)).isTrue();
        assertThat(off.update(run, false)).isFalse();
        assertThat(pulse.update(run, true)).isFalse();
    }

    @Test
    void an_off_delay_that_is_cleared_is_at_rest_at_once_and_does_not_count_the_fall() {
        final Layout layout = new Layout();
        final OffDelay off = new OffDelay(layout, "off", PT_NS);
        final RunState run = layout.newRun();
        off.update(run, true);
        off.update(run, false);
        off.clear(run);
        assertThat(off.update(run, false)).isFalse();

        off.update(run, true);
        off.clear(run);
        assertThat(off.update(run, false)).isFalse();
    }
}
