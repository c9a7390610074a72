package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.simulator.referee.TestRig.MS;
import static slackwater.simulator.referee.TestRig.ms;
import static slackwater.simulator.referee.TestRig.not;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.Begun;
import slackwater.model.Facts;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

/** The tray is dry when its level has been inactive for 500 ms; the controller may sample it one period late. */
final class TrippingTest {
    private static Run wet(final Begun begun) {
        final TestRig rig = new TestRig()
                .output("mist", Family.MISTER)
                .input("water", InputFamily.LEVEL, ms(0), ms(500))
                .button("reset", Input.Use.RESET, Facts.NONE)
                .button("south-reset", Input.Use.RESET, Facts.NONE)
                .interlock(new Interlock.Trip("tray-dry", List.of("mist"), List.of(not("water")), begun));
        final Run run = Run.dark(rig);
        run.setInput("water", true);
        run.look(0).referee.act(0, new Act.ScheduleOpens());
        return run;
    }

    private static Run tripped() {
        return wet(Begun.REST).inactive("water", 1000 * MS).idle(2000 * MS);
    }

    private static Run press(final Run run, final String button, final long fromMs, final long untilMs) {
        return run.active(button, fromMs * MS).inactive(button, untilMs * MS);
    }

    @Test
    void the_output_has_one_period_to_rest_after_the_cause_is_proven() {
        final Run run = wet(Begun.REST).on("mist", 500 * MS).inactive("water", 1003 * MS);
        assertThat(run.off("mist", 1513 * MS).found()).isEmpty();
    }

    @Test
    void a_nanosecond_more_is_late_and_is_found_without_an_edge() {
        final Run run = wet(Begun.REST).on("mist", 500 * MS).inactive("water", 1003 * MS);
        assertThat(run.idle(9000 * MS).found()).containsExactly("trip mist 1513000001");
    }

    @Test
    void a_cause_that_breaks_before_any_phase_of_the_scan_had_to_see_it_is_no_trip() {
        final Run run = wet(Begun.REST).on("mist", 500 * MS).inactive("water", 1003 * MS);
        assertThat(run.active("water", 1513 * MS - 1).idle(9000 * MS).found()).isEmpty();
    }

    @Test
    void a_stroke_that_may_finish_goes_on_but_does_not_start_again() {
        final Run run = wet(Begun.FINISH).on("mist", 500 * MS).inactive("water", 1000 * MS);
        assertThat(run.off("mist", 5000 * MS).found()).isEmpty();
        assertThat(run.on("mist", 6000 * MS).found()).containsExactly("trip mist 6000000000");
    }

    @Test
    void a_start_by_a_scan_that_has_sampled_the_cause_for_its_time_is_wrong_already() {
        assertThat(wet(Begun.REST)
                        .inactive("water", 1000 * MS)
                        .on("mist", 1500 * MS)
                        .found())
                .containsExactly("trip mist 1500000000");
        // A scan a nanosecond sooner took its first sample of the cause almost a whole period after the change.
        assertThat(wet(Begun.REST)
                        .inactive("water", 1000 * MS)
                        .on("mist", 1500 * MS - 1)
                        .off("mist", 1505 * MS)
                        .found())
                .isEmpty();
    }

    @Test
    void the_cause_going_away_clears_nothing() {
        final Run run = tripped().active("water", 3000 * MS);
        assertThat(run.on("mist", 9000 * MS).found()).containsExactly("trip mist 9000000000");
    }

    @Test
    void a_reset_with_the_cause_gone_clears_it() {
        final Run run = tripped().active("water", 3000 * MS);
        assertThat(press(run, "reset", 4000, 4100).on("mist", 5000 * MS).found())
                .isEmpty();
    }

    @Test
    void a_reset_while_the_cause_is_there_clears_nothing() {
        final Run run = press(tripped(), "reset", 3000, 3100).active("water", 4000 * MS);
        assertThat(run.on("mist", 5000 * MS).found()).containsExactly("trip mist 5000000000");
    }

    @Test
    void a_reset_counts_if_the_cause_goes_while_the_controller_still_proves_the_release() {
        final Run at = press(tripped(), "reset", 3000, 3100).active("water", 3140 * MS);
        assertThat(at.on("mist", 5000 * MS).found()).isEmpty();
        final Run past = press(tripped(), "reset", 3000, 3100).active("water", 3140 * MS + 1);
        assertThat(past.on("mist", 5000 * MS).found()).containsExactly("trip mist 5000000000");
    }

    @Test
    void a_press_that_is_still_held_resets_nothing() {
        final Run run = tripped().active("water", 3000 * MS).active("reset", 4000 * MS);
        assertThat(run.on("mist", 5000 * MS).found()).containsExactly("trip mist 5000000000");
    }

    @Test
    void a_press_shorter_than_its_proving_time_resets_nothing() {
        final Run at = tripped().active("water", 3000 * MS);
        assertThat(press(at, "reset", 4000, 4030).on("mist", 5000 * MS).found()).isEmpty();
        final Run before = tripped().active("water", 3000 * MS).active("reset", 4000 * MS);
        assertThat(before.inactive("reset", 4030 * MS - 1).on("mist", 5000 * MS).found())
                .containsExactly("trip mist 5000000000");
    }

    @Test
    void the_other_controllers_button_resets_nothing() {
        final Run run = press(tripped().active("water", 3000 * MS), "south-reset", 4000, 4100);
        assertThat(run.on("mist", 5000 * MS).found()).containsExactly("trip mist 5000000000");
    }

    @Test
    void it_trips_again_after_a_reset() {
        final Run run = press(tripped().active("water", 3000 * MS), "reset", 4000, 4100);
        run.on("mist", 5000 * MS).inactive("water", 6000 * MS);
        assertThat(run.idle(9000 * MS).found()).containsExactly("trip mist 6510000001");
    }
}
