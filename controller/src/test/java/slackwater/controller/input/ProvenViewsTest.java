package slackwater.controller.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Two proven views of each input (S7): each falls at once and rises only after its own unbroken time. */
final class ProvenViewsTest {
    private static final long MS = 1_000_000L;

    @Test
    void active_is_proven_only_once_its_time_is_whole() {
        final Line line = Line.low(Line.proving(200, 500)).at(1_000).levelAt(true, 1_010);
        assertThat(line.isProvenActive()).isFalse();
        assertThat(line.atNs(1_210 * MS - 1).isProvenActive()).isFalse();
        assertThat(line.rose()).isFalse();
        assertThat(line.atNs(1_210 * MS).isProvenActive()).isTrue();
        assertThat(line.rose()).isTrue();
        assertThat(line.at(1_220).isProvenActive()).isTrue();
        assertThat(line.rose()).isFalse();
    }

    @Test
    void inactive_is_proven_only_once_its_own_time_is_whole() {
        final Line line = Line.high(Line.proving(200, 500)).at(1_000).levelAt(false, 1_010);
        assertThat(line.isProvenInactive()).isFalse();
        assertThat(line.atNs(1_510 * MS - 1).isProvenInactive()).isFalse();
        assertThat(line.fell()).isFalse();
        assertThat(line.atNs(1_510 * MS).isProvenInactive()).isTrue();
        assertThat(line.fell()).isTrue();
        assertThat(line.at(1_520).isProvenInactive()).isTrue();
        assertThat(line.fell()).isFalse();
    }

    @Test
    void each_view_falls_at_the_first_sample_that_disagrees() {
        final Line active = Line.high(Line.proving(200, 500)).at(200);
        assertThat(active.isProvenActive()).isTrue();
        assertThat(active.levelAt(false, 210).isProvenActive()).isFalse();
        assertThat(active.isProvenInactive()).isFalse();

        final Line inactive = Line.low(Line.proving(200, 500)).at(500);
        assertThat(inactive.isProvenInactive()).isTrue();
        assertThat(inactive.levelAt(true, 510).isProvenInactive()).isFalse();
        assertThat(inactive.isProvenActive()).isFalse();
    }

    @Test
    void one_disagreeing_sample_starts_the_time_afresh() {
        final Line line =
                Line.low(Line.proving(200, 500)).levelAt(true, 1_000).levelAt(false, 1_190).levelAt(true, 1_200);
        assertThat(line.atNs(1_400 * MS - 1).isProvenActive()).isFalse();
        assertThat(line.at(1_400).isProvenActive()).isTrue();
    }

    /** With one cautious value the same switch would be right for one of its two uses and wrong for the other. */
    @Test
    void a_chattering_pressure_switch_says_neither_enough_air_nor_air_gone() {
        final Line line = Line.high(Line.proving(200, 200)).at(200);
        assertThat(line.satisfies(true)).isTrue();
        for (long ms = 210; ms < 3_000; ms += 50) {
            line.levelAt((ms - 210) / 50 % 2 == 1, ms);
            assertThat(line.satisfies(true)).as("enough at %d ms", ms).isFalse();
            assertThat(line.satisfies(false)).as("gone at %d ms", ms).isFalse();
            assertThat(line.rose() || line.fell()).isFalse();
        }
    }

    @Test
    void a_chatter_between_the_samples_breaks_both_views_just_the_same() {
        final Line line = Line.high(Line.proving(200, 200)).at(200);
        line.pins.pulse(0);
        assertThat(line.at(210).satisfies(true)).isFalse();
        assertThat(line.atNs(410 * MS - 1).satisfies(true)).isFalse();
        assertThat(line.at(410).satisfies(true)).isTrue();
    }

    @Test
    void a_stop_loop_that_opens_for_3_ms_between_two_scans_is_seen_open() {
        final Line loop = Line.high(Line.proving(200, 0)).at(200);
        assertThat(loop.image.sawInactive[0]).isFalse();
        loop.pins.pulse(0); // open at 203 ms, closed again at 206 ms
        loop.at(210);
        assertThat(loop.image.sawInactive[0]).isTrue();
        assertThat(loop.image.sawActive[0]).isTrue();
        assertThat(loop.isProvenActive()).isFalse();
        assertThat(loop.at(220).image.sawInactive[0]).isFalse();
    }

    @Test
    void a_pulse_shorter_than_a_scan_counts_where_no_proving_is_asked() {
        final Line line = Line.low(Line.proving(0, 0)).at(10);
        line.pins.pulse(0);
        line.at(20);
        assertThat(line.rose()).isTrue();
        assertThat(line.isProvenActive()).isFalse();
        assertThat(line.image.sawActive[0]).isTrue();
        assertThat(line.at(30).rose()).isFalse();
    }

    @Test
    void a_pulse_shorter_than_a_scan_is_no_rise_where_any_proving_is_asked() {
        final Line line = Line.low(Line.proving(1, 0)).at(10);
        line.pins.pulse(0);
        line.at(20);
        assertThat(line.rose()).isFalse();
        assertThat(line.image.sawActive[0]).isTrue();
    }

    @Test
    void a_short_gap_in_an_active_line_is_no_new_start() {
        final Line line = Line.low(Line.proving(0, 0)).levelAt(true, 10);
        assertThat(line.rose()).isTrue();
        line.pins.pulse(0);
        assertThat(line.at(20).rose()).isFalse();
        assertThat(line.image.sawInactive[0]).isTrue();
    }

    @Test
    void what_was_seen_is_what_is_when_nothing_changed() {
        final Line line = Line.low(Line.proving(0, 0)).at(10);
        assertThat(line.image.sawActive[0]).isFalse();
        assertThat(line.image.sawInactive[0]).isTrue();
        line.levelAt(true, 20);
        assertThat(line.image.sawActive[0]).isTrue();
        assertThat(line.image.sawInactive[0]).isFalse();
    }

    @Test
    void an_input_is_exercised_once_both_views_have_been_proven() {
        final Line line = Line.high(Line.proving(200, 100)).at(200);
        assertThat(line.isProvenActive()).isTrue();
        assertThat(line.image.exercised[0]).isFalse();
        line.levelAt(false, 210).at(309);
        assertThat(line.image.exercised[0]).isFalse();
        assertThat(line.at(310).image.exercised[0]).isTrue();
        assertThat(line.levelAt(true, 320).image.exercised[0]).isTrue();
    }

    @Test
    void being_seen_inactive_only_does_not_exercise_an_input_either() {
        final Line line = Line.low(Line.proving(200, 0)).levelAt(true, 10).levelAt(false, 200);
        assertThat(line.image.exercised[0]).isFalse();
    }

    @Test
    void an_input_that_is_active_low_is_active_at_the_low_level() {
        final Line line = Line.activeLow(Line.proving(0, 0)).at(10);
        assertThat(line.isProvenInactive()).isTrue();
        assertThat(line.levelAt(false, 20).isProvenActive()).isTrue();
        assertThat(line.rose()).isTrue();
    }

    @Test
    void the_words_for_a_refusal_say_what_it_has_been_and_since_when() {
        final Line line = Line.low(Line.proving(0, 0)).at(10);
        assertThat(line.stage.observed(line.run, 0)).isEqualTo("path has been inactive");
        assertThat(line.stage.sinceNs(line.run, 0)).isZero();
        line.levelAt(true, 20).at(30);
        assertThat(line.stage.observed(line.run, 0)).isEqualTo("path has been active");
        assertThat(line.stage.sinceNs(line.run, 0)).isEqualTo(20 * MS);
    }
}
