package slackwater.controller.pins;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class VirtualPinsTest {
    private final VirtualPins pins = new VirtualPins(new boolean[] {false, true}, new boolean[] {true, false});

    @Test
    void levels_to_begin_with_are_those_given_and_no_edges() {
        pins.sample();
        assertThat(pins.isHigh(0)).isFalse();
        assertThat(pins.isHigh(1)).isTrue();
        assertThat(pins.hadEdge(0)).isFalse();
        assertThat(pins.isOutputHigh(0)).isTrue();
        assertThat(pins.isOutputHigh(1)).isFalse();
        assertThat(pins.hasNews()).isFalse();
        assertThat(pins.readBack(0)).isEqualTo(Pins.ReadBack.UNKNOWN);
    }

    @Test
    void a_level_is_seen_at_the_next_sample_and_not_before() {
        assertThat(pins.set(0, true)).isTrue();
        assertThat(pins.set(0, true)).isFalse();
        assertThat(pins.isHigh(0)).isFalse();
        assertThat(pins.hasNews()).isTrue();
        pins.sample();
        assertThat(pins.isHigh(0)).isTrue();
        assertThat(pins.hadEdge(0)).isFalse();
        assertThat(pins.hasNews()).isFalse();
    }

    @Test
    void a_line_that_went_away_and_came_back_between_samples_had_an_edge_once() {
        pins.set(0, true);
        pins.set(0, false);
        pins.pulse(1);
        pins.sample();
        assertThat(pins.isHigh(0)).isFalse();
        assertThat(pins.hadEdge(0)).isTrue();
        assertThat(pins.hadEdge(1)).isTrue();
        pins.sample();
        assertThat(pins.hadEdge(0)).isFalse();
        assertThat(pins.hadEdge(1)).isFalse();
    }

    @Test
    void the_hold_up_line_counts_edges_not_writes() {
        pins.writeHoldUp(false);
        pins.writeHoldUp(true);
        pins.writeHoldUp(true);
        pins.writeHoldUp(false);
        assertThat(pins.holdUpEdges()).isEqualTo(2);
        pins.setHoldUpSeenClosed(true);
        assertThat(pins.isHoldUpSeenClosed()).isTrue();
    }

    @Test
    void a_copy_has_everything_and_goes_on_by_itself() {
        pins.set(0, true);
        pins.sample();
        pins.pulse(1);
        pins.write(1, true);
        pins.setReadBack(1, Pins.ReadBack.ENERGISED);
        pins.writeHoldUp(true);
        pins.setHoldUpSeenClosed(true);
        final VirtualPins copy = pins.copy();
        assertThat(copy.isHigh(0)).isTrue();
        assertThat(copy.hasNews()).isTrue();
        assertThat(copy.isOutputHigh(1)).isTrue();
        assertThat(copy.readBack(1)).isEqualTo(Pins.ReadBack.ENERGISED);
        assertThat(copy.holdUpEdges()).isEqualTo(1);
        assertThat(copy.isHoldUpSeenClosed()).isTrue();
        copy.writeHoldUp(true);
        assertThat(copy.holdUpEdges()).isEqualTo(1);

        copy.set(0, false);
        copy.sample();
        copy.write(1, false);
        copy.setReadBack(1, Pins.ReadBack.AT_REST);
        assertThat(copy.hadEdge(1)).isTrue();
        assertThat(pins.isHigh(0)).isTrue();
        assertThat(pins.hadEdge(1)).isFalse();
        assertThat(pins.isOutputHigh(1)).isTrue();
        assertThat(pins.readBack(1)).isEqualTo(Pins.ReadBack.ENERGISED);
        pins.sample();
        assertThat(pins.hadEdge(1)).isTrue();
        assertThat(pins.isHigh(0)).isTrue();
    }

    @Test
    void a_copy_keeps_an_edge_that_was_already_sampled() {
        pins.pulse(0);
        pins.sample();
        assertThat(pins.copy().hadEdge(0)).isTrue();
    }
}
