package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.simulator.referee.TestRig.MS;
import static slackwater.simulator.referee.TestRig.ms;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slackwater.model.Facts;
import slackwater.model.Input;
import slackwater.model.kind.Family;

/** Handbook 6.5: the stop overrides all, latches, and its release permits a restart but starts nothing. */
final class StopAndArmTest {
    private static TestRig banks() {
        return new TestRig()
                .output("lid", Family.VALVE)
                .output("lamp", Family.LAMP)
                .output("air", Family.AIR_SUPPLY)
                .output("south-lid", Family.VALVE)
                .button("reset", Input.Use.RESET, Facts.NONE)
                .button("south-reset", Input.Use.RESET, Facts.NONE)
                .button("arm", Input.Use.ARM, Facts.NONE)
                .button("south-arm", Input.Use.ARM, Facts.NONE);
    }

    /** Stopped from 1000 ms to 2000 ms. */
    private static Run afterStop() {
        return Run.armed(banks()).inactive("stop-loop", 1000 * MS).active("stop-loop", 2000 * MS);
    }

    private static Run press(final Run run, final String button, final long fromMs) {
        return run.active(button, fromMs * MS).inactive(button, (fromMs + 100) * MS);
    }

    @Test
    void every_pin_of_every_controller_may_take_one_period_to_rest() {
        final Run run = Run.armed(banks()).on("lid", 0).on("lamp", 1).on("south-lid", 2);
        run.inactive("stop-loop", 1003 * MS).off("lid", 1013 * MS).off("lamp", 1013 * MS);
        assertThat(run.off("south-lid", 1013 * MS).found()).isEmpty();
    }

    @Test
    void a_nanosecond_more_is_late_on_each_of_them() {
        final Run run = Run.armed(banks()).on("lid", 0).on("lamp", 1).on("south-lid", 2);
        assertThat(run.inactive("stop-loop", 1003 * MS).idle(9000 * MS).found())
                .containsExactly("stop lid 1013000001", "stop lamp 1013000001", "stop south-lid 1013000001");
    }

    @Test
    void a_loop_that_opens_for_three_milliseconds_stops() {
        final Run run = Run.armed(banks()).on("lid", 0);
        run.inactive("stop-loop", 1003 * MS).active("stop-loop", 1006 * MS);
        assertThat(run.idle(2000 * MS).found()).containsExactly("stop lid 1013000001");
        assertThat(run.off("lid", 2000 * MS).on("lid", 3000 * MS).found()).contains("stop lid 3000000000");
    }

    @Test
    void nothing_starts_while_the_loop_is_open_or_before_a_reset() {
        final Run open = Run.armed(banks()).inactive("stop-loop", 1000 * MS);
        assertThat(open.on("lamp", 1500 * MS).found()).containsExactly("stop lamp 1500000000");
        assertThat(afterStop().on("lamp", 5000 * MS).found()).containsExactly("stop lamp 5000000000");
        assertThat(press(afterStop(), "arm", 3000).on("lid", 5000 * MS).found()).containsExactly("stop lid 5000000000");
    }

    @Test
    void after_the_reset_lamps_may_light_but_nothing_moves_and_no_air_comes_before_an_arming() {
        final Run run = press(afterStop(), "reset", 3000);
        assertThat(run.on("lamp", 4000 * MS).found()).isEmpty();
        assertThat(run.on("lid", 5000 * MS).on("air", 6000 * MS).found())
                .containsExactly("stop lid 5000000000", "stop air 6000000000");
    }

    @Test
    void after_reset_and_arming_it_moves_again() {
        final Run run = press(afterStop(), "reset", 3000).active("arm", 4000 * MS);
        assertThat(run.on("lid", 5000 * MS).on("air", 5001 * MS).found()).isEmpty();
    }

    @Test
    void an_arming_before_the_reset_does_not_count() {
        final Run run = press(press(afterStop(), "arm", 3000), "reset", 4000);
        assertThat(run.on("lid", 5000 * MS).found()).containsExactly("stop lid 5000000000");
    }

    @Test
    void a_reset_while_the_loop_is_open_does_not_count() {
        final Run run = Run.armed(banks()).inactive("stop-loop", 1000 * MS);
        press(run, "reset", 2000).active("stop-loop", 3000 * MS);
        assertThat(run.on("lamp", 5000 * MS).found()).containsExactly("stop lamp 5000000000");
    }

    @Test
    void a_reset_button_pressed_since_power_on_resets_nothing() {
        final Run run = Run.dark(banks());
        run.setInput("reset", true);
        run.look(0).inactive("stop-loop", 1000 * MS).active("stop-loop", 2000 * MS);
        assertThat(run.inactive("reset", 3000 * MS).on("lamp", 4000 * MS).found())
                .containsExactly("stop lamp 4000000000");
    }

    @Test
    void each_controller_needs_its_own_reset_and_its_own_key() {
        final Run run = press(press(afterStop(), "reset", 3000), "arm", 4000);
        assertThat(run.on("south-lid", 5000 * MS).found()).containsExactly("stop south-lid 5000000000");
        final Run reset = press(press(press(afterStop(), "reset", 3000), "south-reset", 3500), "arm", 4000);
        assertThat(reset.on("south-lid", 5000 * MS).found()).containsExactly("stop south-lid 5000000000");
    }

    @Test
    void a_broken_sense_wire_stops_the_controller_that_it_belongs_to() {
        final Run run = Run.armed(banks()).on("lid", 0).on("south-lid", 1);
        run.setInput("stop-loop", 1, false);
        assertThat(run.look(1000 * MS).idle(9000 * MS).found()).containsExactly("stop south-lid 1010000001");
    }

    @Test
    void a_loop_that_is_open_from_the_start_stops_from_the_start() {
        final Run run = Run.dark(banks());
        run.setInput("stop-loop", false);
        assertThat(run.look(0).on("lamp", 10 * MS).found()).containsExactly("stop lamp 10000000");
    }

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            names = {"VALVE", "PUMP", "MISTER", "RELEASE", "STROBE", "CONTACT"})
    void what_moves_or_startles_waits_for_the_first_arming(final Family family) {
        final Run run = Run.dark(new TestRig().output("it", family)).look(0);
        assertThat(run.pulse("it", 10 * MS, 20 * MS).found()).containsExactly("before-arm it 10000000");
    }

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            names = {"VALVE", "PUMP", "MISTER", "RELEASE", "STROBE", "CONTACT"},
            mode = EnumSource.Mode.EXCLUDE)
    void everything_else_may_run_before(final Family family) {
        assertThat(Run.dark(new TestRig().output("it", family))
                        .look(0)
                        .on("it", 10 * MS)
                        .found())
                .isEmpty();
    }

    @Test
    void a_key_turned_on_since_power_on_is_no_arming() {
        final Run run = Run.dark(banks());
        run.setInput("arm", true);
        assertThat(run.look(0).on("lid", 10 * MS).found()).containsExactly("before-arm lid 10000000");
    }

    @Test
    void the_page_arms_one_zone_and_the_schedule_arms_all() {
        final Run page = Run.dark(banks()).look(0).act(new Act.Arm("north", "Ole"), 5 * MS);
        assertThat(page.on("lid", 10 * MS).on("south-lid", 11 * MS).found())
                .containsExactly("before-arm south-lid 11000000");
        final Run schedule = Run.dark(banks()).look(0).act(new Act.ScheduleOpens(), 5 * MS);
        assertThat(schedule.on("lid", 10 * MS).on("south-lid", 11 * MS).found()).isEmpty();
    }

    private static TestRig standing() {
        return banks().button("stand-down", Input.Use.STAND_DOWN, Facts.NONE);
    }

    @Test
    void a_stand_down_button_disarms_with_its_edge_and_only_its_own_zone() {
        final Run run = Run.armed(standing()).active("stand-down", 1000 * MS);
        assertThat(run.on("lamp", 1000 * MS + 1).on("south-lid", 1000 * MS + 2).found())
                .isEmpty();
        assertThat(run.on("lid", 1000 * MS + 3).on("air", 1000 * MS + 4).found())
                .containsExactly("before-arm lid 1000000003", "before-arm air 1000000004");
    }

    @Test
    void what_starts_in_the_moment_of_the_stand_down_is_judged_by_it_and_what_was_on_is_no_start() {
        final Run run = Run.armed(standing()).on("lid", 999 * MS).idle(1000 * MS - 1);
        run.setInput("stand-down", true);
        run.setOutput("air", true);
        assertThat(run.look(1000 * MS).found()).containsExactly("before-arm air 1000000000");
    }

    @Test
    void a_key_turned_off_disarms_once_its_controller_has_surely_proven_it() {
        final long surelyMs = 1000 + 30 + 10; // proving time and one scan
        final Run before = Run.armed(banks()).active("arm", 500 * MS).inactive("arm", 1000 * MS);
        assertThat(before.on("lid", surelyMs * MS - 1).found()).isEmpty();
        final Run at = Run.armed(banks()).active("arm", 500 * MS).inactive("arm", 1000 * MS);
        assertThat(at.on("lid", surelyMs * MS).found()).containsExactly("before-arm lid 1040000000");
    }

    @Test
    void a_key_that_is_back_before_it_was_proven_off_disarms_nothing_and_later_it_arms_again() {
        final Run tooShort = Run.armed(banks().warning(ms(5000))).active("arm", 500 * MS);
        tooShort.inactive("arm", 1000 * MS).active("arm", 1039 * MS);
        assertThat(tooShort.on("lid", 5001 * MS).found()).isEmpty();
        final Run longEnough = Run.armed(banks().warning(ms(5000))).active("arm", 500 * MS);
        longEnough.inactive("arm", 1000 * MS).active("arm", 1040 * MS);
        assertThat(longEnough.on("lid", 6040 * MS - 1).found()).containsExactly("before-arm lid 6039999999");
    }

    @Test
    void the_schedule_closes_for_all_and_the_page_stands_one_zone_down() {
        final Run schedule = Run.armed(banks()).act(new Act.ScheduleCloses(), 1000 * MS);
        assertThat(schedule.on("lid", 1000 * MS).on("south-lid", 1001 * MS).found())
                .containsExactly("before-arm lid 1000000000", "before-arm south-lid 1001000000");
        final Run page = Run.armed(banks()).act(new Act.StandDown("north", "Ole"), 1000 * MS);
        assertThat(page.on("south-lid", 1000 * MS).on("lid", 1001 * MS).found())
                .containsExactly("before-arm lid 1001000000");
        assertThat(page.act(new Act.Arm("north", "Ole"), 2000 * MS)
                        .off("lid", 2001 * MS)
                        .on("lid", 2002 * MS)
                        .found())
                .hasSize(1);
    }

    @Test
    void a_zone_that_was_locked_is_armed_again_by_a_person_and_not_by_the_unlocking() {
        final Run run = Run.armed(banks()).act(new Act.Lockout("north", "Ole"), 1000 * MS);
        run.act(new Act.Unlock("north", "Ole"), 2000 * MS);
        assertThat(run.on("lid", 3000 * MS).found()).containsExactly("before-arm lid 3000000000");
    }

    @Test
    void nothing_moves_until_the_warning_is_over() {
        final Run at = Run.dark(banks().warning(ms(5000))).look(0).active("arm", 1000 * MS);
        assertThat(at.on("lid", 6000 * MS).found()).isEmpty();
        final Run before = Run.dark(banks().warning(ms(5000))).look(0).active("arm", 1000 * MS);
        assertThat(before.on("lamp", 1001 * MS).on("lid", 6000 * MS - 1).found())
                .containsExactly("before-arm lid 5999999999");
    }

    @Test
    void arming_what_is_armed_warns_nobody_again() {
        final Run run = Run.dark(banks().warning(ms(5000))).look(0).active("arm", 1000 * MS);
        run.act(new Act.Arm("north", "Ole"), 8000 * MS);
        assertThat(run.on("lid", 8001 * MS).found()).isEmpty();
    }

    @Test
    void the_worst_time_from_stop_to_rest_is_told() {
        final Run run = Run.armed(banks()).on("lid", 0).on("south-lid", 1);
        run.inactive("stop-loop", 1000 * MS).off("lid", 1002 * MS);
        assertThat(run.referee.figures().worstStopToRestNs()).isEqualTo(Long.MAX_VALUE);
        run.off("south-lid", 1007 * MS);
        assertThat(run.referee.figures().worstStopToRestNs()).isEqualTo(7 * MS);
    }
}
