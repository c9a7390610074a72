package slackwater.controller.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The three timers against the timing tables of IEC 61131-3, row by row (handbook 6.1, 6.2 and 6.3). */
final class IecTimingTest {
    private static final long PT_NS = 5_000_000_000L;
    private static final String DUE = "block due ";
    /** IN rises at 1, falls at 8, rises at 10, falls at 13 s. */
    private static final String ON_DELAY = """
            6.1.1 at 0 s: IN 0 Q 0 ET 0
            6.1.2 at 1 s: IN 1 Q 0 ET 0
            6.1.3 at 3 s: IN 1 Q 0 ET 2
            6.1.4 at 5.9 s: IN 1 Q 0 ET 4.9
            6.1.5 at 6 s: IN 1 Q 1 ET 5
            6.1.6 at 7 s: IN 1 Q 1 ET 5
            6.1.7 at 8 s: IN 0 Q 0 ET 0
            6.1.8 at 9 s: IN 0 Q 0 ET 0
            6.1.9 at 10 s: IN 1 Q 0 ET 0
            6.1.10 at 12 s: IN 1 Q 0 ET 2
            6.1.11 at 13 s: IN 0 Q 0 ET 0
            6.1.12 at 14 s: IN 0 Q 0 ET 0
            """;
    /** IN rises at 1, falls at 3, rises at 10, falls at 12, rises at 14, falls at 16 s. */
    private static final String OFF_DELAY = """
            6.2.1 at 0 s: IN 0 Q 0 ET 0
            6.2.2 at 1 s: IN 1 Q 1 ET 0
            6.2.3 at 2 s: IN 1 Q 1 ET 0
            6.2.4 at 3 s: IN 0 Q 1 ET 0
            6.2.5 at 5 s: IN 0 Q 1 ET 2
            6.2.6 at 7.9 s: IN 0 Q 1 ET 4.9
            6.2.7 at 8 s: IN 0 Q 0 ET 5
            6.2.8 at 9 s: IN 0 Q 0 ET 5
            6.2.9 at 10 s: IN 1 Q 1 ET 0
            6.2.10 at 12 s: IN 0 Q 1 ET 0
            6.2.11 at 13.9 s: IN 0 Q 1 ET 1.9
            6.2.12 at 14 s: IN 1 Q 1 ET 0
            6.2.13 at 16 s: IN 0 Q 1 ET 0
            6.2.14 at 20.9 s: IN 0 Q 1 ET 4.9
            6.2.15 at 21 s: IN 0 Q 0 ET 5
            """;
    /** IN is true from 1 to 2, 4 to 5, 10 to 18 and 20 to 21 s. */
    private static final String PULSE = """
            6.3.1 at 0 s: IN 0 Q 0 ET 0
            6.3.2 at 1 s: IN 1 Q 1 ET 0
            6.3.3 at 2 s: IN 0 Q 1 ET 1
            6.3.4 at 4 s: IN 1 Q 1 ET 3
            6.3.5 at 5.9 s: IN 0 Q 1 ET 4.9
            6.3.6 at 6 s: IN 0 Q 0 ET 0
            6.3.7 at 7 s: IN 0 Q 0 ET 0
            6.3.8 at 10 s: IN 1 Q 1 ET 0
            6.3.9 at 14.9 s: IN 1 Q 1 ET 4.9
            6.3.10 at 15 s: IN 1 Q 0 ET 5
            6.3.11 at 17 s: IN 1 Q 0 ET 5
            6.3.12 at 18 s: IN 0 Q 0 ET 0
            6.3.13 at 20 s: IN 1 Q 1 ET 0
            6.3.14 at 24.9 s: IN 0 Q 1 ET 4.9
            6.3.15 at 25 s: IN 0 Q 0 ET 0
            """;

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

    /** Follows a table to a row, and tells what the block then says; rows before it have their own case. */
    private static void assertRow(
            final Layout layout, final Block block, final String table, final String wanted, final boolean hasElapsed) {
        final RunState run = layout.newRun();
        final List<String> rows = table.lines().toList();
        assertThat(rows).contains(wanted);
        boolean q = false;
        for (final String row : rows.subList(0, rows.indexOf(wanted) + 1)) {
            run.begin(ns(cell(row, "at")));
            q = block.update(run, cell(row, "IN").equals("1"));
        }
        assertThat(q).as(wanted).isEqualTo(cell(wanted, "Q").equals("1"));
        if (hasElapsed || q) {
            assertThat(elapsedNs(layout, run)).as(wanted).isEqualTo(ns(cell(wanted, "ET")));
        }
    }

    private static String cell(final String row, final String name) {
        final List<String> words = List.of(row.split(" ", -1));
        return words.get(words.indexOf(name) + 1);
    }

    private static Stream<String> onDelay() {
        return ON_DELAY.lines();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("onDelay")
    void on_delay_follows_the_table(final String row) {
        final Layout layout = new Layout();
        final OnDelay block = new OnDelay(layout, "block", PT_NS);
        assertRow(layout, block::update, ON_DELAY, row, true);
    }

    private static Stream<String> offDelay() {
        return OFF_DELAY.lines();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("offDelay")
    void off_delay_follows_the_table(final String row) {
        final Layout layout = new Layout();
        final OffDelay block = new OffDelay(layout, "block", PT_NS);
        assertRow(layout, block::update, OFF_DELAY, row, true);
    }

    private static Stream<String> pulse() {
        return PULSE.lines();
    }

    /** After the pulse the table's ET is a matter of display; the block keeps a deadline only. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("pulse")
    void pulse_follows_the_table(final String row) {
        final Layout layout = new Layout();
        final Pulse block = new Pulse(layout, "block", PT_NS);
        assertRow(layout, block::update, PULSE, row, false);
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
