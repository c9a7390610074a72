package slackwater.controller.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.model.event.Event;

/** Inputs that are not believed: warming up, or active for too long (S7, S23). */
final class DoubtedInputTest {
    private static final long MS = 1_000_000L;

    private static boolean isNeither(final Line line) {
        return !line.isProvenActive() && !line.isProvenInactive() && !line.rose() && !line.fell();
    }

    /** Motion sensors pulse up to three times in their first minute (data sheets; common practice, no one source). */
    @Test
    void three_warm_up_pulses_prove_nothing_and_start_nothing() {
        final Line line = Line.low(Line.warmingUp(0, 0, 60_000));
        for (final long at : new long[] {5_000, 20_000, 40_000}) {
            assertThat(isNeither(line.levelAt(true, at))).isTrue();
            assertThat(isNeither(line.at(at + 1_000))).isTrue();
            assertThat(isNeither(line.levelAt(false, at + 2_000))).isTrue();
        }
        line.pins.pulse(0);
        assertThat(isNeither(line.at(59_990))).isTrue();
        assertThat(line.image.exercised[0]).isFalse();
    }

    @Test
    void warm_up_ends_exactly_at_its_time() {
        final Line line = Line.low(Line.warmingUp(0, 0, 60_000));
        assertThat(isNeither(line.atNs(60_000 * MS - 1))).isTrue();
        assertThat(line.stage.observed(line.run, 0)).isEqualTo("path is warming up");
        assertThat(line.atNs(60_000 * MS).isProvenInactive()).isTrue();
        assertThat(line.stage.observed(line.run, 0)).isEqualTo("path has been inactive");
    }

    @Test
    void warm_up_counts_from_the_first_sample_and_movement_does_not_renew_it() {
        final Line line = Line.low(Line.warmingUp(0, 0, 60_000)).levelAt(true, 59_000);
        assertThat(line.levelAt(false, 60_000).isProvenInactive()).isTrue();
    }

    @Test
    void somebody_who_came_while_it_warmed_up_is_there_but_starts_nothing() {
        final Line line = Line.low(Line.warmingUp(100, 0, 60_000)).levelAt(true, 59_950);
        line.at(60_049);
        assertThat(line.isProvenActive()).isFalse();
        line.at(60_050);
        assertThat(line.isProvenActive()).isTrue();
        assertThat(line.rose()).isFalse();
    }

    @Test
    void somebody_who_comes_in_the_very_scan_in_which_it_is_warm_starts() {
        final Line line = Line.low(Line.warmingUp(0, 0, 60_000)).levelAt(true, 60_000);
        assertThat(line.rose()).isTrue();
    }

    @Test
    void active_at_power_on_is_no_start_and_the_next_rise_is() {
        final Line line = Line.high(Line.proving(0, 0));
        assertThat(line.isProvenActive()).isTrue();
        assertThat(line.rose()).isFalse();
        line.levelAt(false, 10);
        assertThat(line.levelAt(true, 20).rose()).isTrue();
    }

    @Test
    void active_for_too_long_is_stuck_exactly_at_its_time_and_then_neither() {
        final Line line = Line.low(Line.stuckAfter(30_000)).levelAt(true, 10);
        line.image.events().clear();
        assertThat(line.atNs(30_010 * MS - 1).isProvenActive()).isTrue();
        assertThat(line.image.events()).isEmpty();
        assertThat(isNeither(line.atNs(30_010 * MS))).isTrue();
        assertThat(line.stage.observed(line.run, 0)).isEqualTo("path is stuck");
        assertThat(line.at(30_020).image.events())
                .containsExactly(new Event.InputDoubted(30_010 * MS, "path", true, "active for too long"));
    }

    @Test
    void a_stuck_input_is_believed_again_when_it_moves() {
        final Line line = Line.low(Line.stuckAfter(30_000)).levelAt(true, 10).at(30_010);
        line.image.events().clear();
        line.levelAt(false, 30_020);
        assertThat(line.isProvenInactive()).isTrue();
        assertThat(line.image.events())
                .containsExactly(new Event.InputDoubted(30_020 * MS, "path", false, "it moved"));
    }

    @Test
    void a_short_movement_between_samples_is_movement_too() {
        final Line line = Line.low(Line.stuckAfter(30_000)).levelAt(true, 10).at(30_000);
        line.pins.pulse(0);
        assertThat(line.at(30_010).isProvenActive()).isTrue();
        assertThat(line.atNs(60_010 * MS - 1).isProvenActive()).isTrue();
        assertThat(line.at(60_010).isProvenActive()).isFalse();
    }

    @Test
    void an_input_is_never_stuck_inactive_or_where_nothing_was_said() {
        final Line quiet = Line.high(Line.stuckAfter(30_000)).levelAt(false, 10);
        assertThat(quiet.at(40_000).isProvenInactive()).isTrue();
        final Line unlimited = Line.high(Line.proving(0, 0));
        assertThat(unlimited.at(1_000_000_000).isProvenActive()).isTrue();
    }

    @Test
    void a_limit_of_no_time_at_all_never_believes_active() {
        final Line line = Line.low(Line.stuckAfter(0)).at(5).levelAt(true, 10);
        assertThat(isNeither(line)).isTrue();
    }

    @Test
    void a_short_pulse_on_a_line_that_is_stuck_starts_nothing() {
        final Line line = Line.low(Line.stuckAfter(0)).levelAt(true, 10);
        line.pins.pulse(0);
        assertThat(line.at(20).rose()).isFalse();
    }
}
