package slackwater.controller.pins;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.image.Image;
import slackwater.controller.pins.PinWriter.Belief;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;

/** Rests before starts (S9) and what is known of an output beside the last write (S10). */
final class PinWriterTest {
    private static final long SETTLES_NS = 50_000_000L;

    private final Layout layout = new Layout();
    private final PinWriter writer = new PinWriter(3, layout);
    private final RunState run = layout.newRun();
    private final Image image = new Image(0, 3, 0);
    private final TracedPins pins = new TracedPins(0, 3);
    private final Gate gate = new Gate(pins, new boolean[3]);
    private final List<String> changes = new ArrayList<>();

    private void commit(final boolean... next) {
        System.arraycopy(next, 0, image.next, 0, next.length);
        writer.commit(run, image, gate, (output, isOn) -> changes.add(output + (isOn ? " on" : " off")));
    }

    private Belief belief(final int output) {
        return writer.belief(run, image, gate, output);
    }

    @Test
    void two_outputs_that_exclude_each_other_are_never_both_energised_while_they_swap() {
        commit(true, false, false);
        pins.takeWrites();
        final List<Boolean> bothOn = new ArrayList<>();
        pins.beforeWrite(() ->
                bothOn.add(pins.lines().isOutputHigh(0) && pins.lines().isOutputHigh(1)));
        commit(false, true, false);
        assertThat(pins.takeWrites()).containsExactly("0=low", "2=low", "1=high");
        commit(true, false, false);
        assertThat(pins.takeWrites()).containsExactly("1=low", "2=low", "0=high");
        assertThat(bothOn).hasSize(6).containsOnly(false);
    }

    @Test
    void rest_levels_are_rewritten_by_every_scan_and_energised_ones_are_not() {
        commit(true, false, false);
        pins.takeWrites();
        commit(true, false, false);
        assertThat(pins.takeWrites()).containsExactly("1=low", "2=low");
    }

    @Test
    void every_real_change_is_told_once_and_kept_as_what_is_energised() {
        commit(true, false, true);
        commit(true, false, true);
        commit(false, false, true);
        assertThat(changes).containsExactly("0 on", "2 on", "0 off");
        assertThat(image.energised).containsExactly(false, false, true);
    }

    @Test
    void an_output_is_believed_until_it_has_had_time_to_settle() {
        commit(true, false, false);
        pins.lines().setReadBack(0, Pins.ReadBack.AT_REST);
        run.begin(SETTLES_NS - 1);
        assertThat(belief(0)).isEqualTo(Belief.FINE);
        run.begin(SETTLES_NS);
        assertThat(belief(0)).isEqualTo(Belief.STUCK_OFF);
        pins.lines().setReadBack(0, Pins.ReadBack.ENERGISED);
        assertThat(belief(0)).isEqualTo(Belief.FINE);
    }

    @Test
    void an_output_that_stays_on_after_it_was_rested_is_stuck_once_settled() {
        commit(true, false, false);
        run.begin(SETTLES_NS);
        commit(false, false, false);
        pins.lines().setReadBack(0, Pins.ReadBack.ENERGISED);
        run.begin(2 * SETTLES_NS - 1);
        assertThat(belief(0)).isEqualTo(Belief.FINE);
        run.begin(2 * SETTLES_NS);
        assertThat(belief(0)).isEqualTo(Belief.STUCK_ON);
        pins.lines().setReadBack(0, Pins.ReadBack.AT_REST);
        assertThat(belief(0)).isEqualTo(Belief.FINE);
    }

    @Test
    void an_output_that_was_never_energised_and_is_on_is_stuck_at_once() {
        pins.lines().setReadBack(1, Pins.ReadBack.ENERGISED);
        assertThat(belief(1)).isEqualTo(Belief.STUCK_ON);
        assertThat(belief(0)).isEqualTo(Belief.FINE);
    }

    /** An echo of the last write is reported as unknown, and proves nothing either way (S10). */
    @Test
    void what_is_unknown_is_never_judged() {
        commit(true, false, false);
        run.begin(10 * SETTLES_NS);
        assertThat(belief(0)).isEqualTo(Belief.FINE);
        assertThat(belief(1)).isEqualTo(Belief.FINE);
    }
}
