package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.simulator.referee.TestRig.MS;
import static slackwater.simulator.referee.TestRig.is;
import static slackwater.simulator.referee.TestRig.ms;
import static slackwater.simulator.referee.TestRig.not;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.model.Begun;
import slackwater.model.Condition;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

final class PermissionTest {
    private static TestRig guarded(final Begun begun, final Condition... needs) {
        return new TestRig()
                .output("lid", Family.VALVE)
                .output("lamp", Family.LAMP)
                .input("reach", InputFamily.BEAM, ms(0), ms(200))
                .input("air-ok", InputFamily.PRESSURE, ms(100), ms(100))
                .input("warm", InputFamily.MOTION, new Input.Proving(ms(0), ms(0), ms(60_000), Optional.of(ms(90_000))))
                .interlock(new Interlock.Permissive("guard", List.of("lid"), List.of(needs), begun));
    }

    @Test
    void a_start_is_right_when_the_level_has_held_for_its_proving_time() {
        final Run run = Run.armed(guarded(Begun.FINISH, is("air-ok"))).active("air-ok", 1000 * MS);
        assertThat(run.on("lid", 1100 * MS).found()).isEmpty();
    }

    @Test
    void a_start_a_nanosecond_before_that_is_wrong() {
        final Run run = Run.armed(guarded(Begun.FINISH, is("air-ok"))).active("air-ok", 1000 * MS);
        assertThat(run.on("lid", 1100 * MS - 1).found()).containsExactly("permissive lid 1099999999");
    }

    @Test
    void inactive_is_proven_by_its_own_time() {
        final Run at = Run.armed(guarded(Begun.FINISH, not("reach")));
        at.active("reach", 1000 * MS).inactive("reach", 1500 * MS);
        assertThat(at.on("lid", 1700 * MS).found()).isEmpty();
        final Run before = Run.armed(guarded(Begun.FINISH, not("reach")));
        before.active("reach", 1000 * MS).inactive("reach", 1500 * MS);
        assertThat(before.on("lid", 1700 * MS - 1).found()).containsExactly("permissive lid 1699999999");
    }

    @Test
    void a_break_shorter_than_a_scan_starts_the_proving_again() {
        final Run run = Run.armed(guarded(Begun.FINISH, not("reach")));
        run.active("reach", 1001 * MS).inactive("reach", 1004 * MS);
        assertThat(run.on("lid", 1010 * MS).found()).containsExactly("permissive lid 1010000000");
    }

    @Test
    void a_guard_that_looks_one_scan_late_is_caught() {
        final Run run = Run.armed(guarded(Begun.FINISH, not("reach")));
        run.active("reach", 1007 * MS);
        assertThat(run.on("lid", 1010 * MS).found()).containsExactly("permissive lid 1010000000");
    }

    @Test
    void a_guard_that_reads_the_opposite_polarity_is_caught() {
        final Run run = Run.armed(guarded(Begun.FINISH, is("air-ok")));
        assertThat(run.on("lid", 1000 * MS).found()).containsExactly("permissive lid 1000000000");
    }

    @Test
    void every_condition_counts() {
        final Run run = Run.armed(guarded(Begun.FINISH, is("air-ok"), not("reach")));
        run.active("air-ok", 100 * MS).active("reach", 200 * MS);
        assertThat(run.on("lid", 1000 * MS).found()).containsExactly("permissive lid 1000000000");
    }

    @Test
    void an_input_proves_nothing_until_its_warm_up_is_over() {
        assertThat(Run.armed(guarded(Begun.FINISH, not("warm")))
                        .on("lid", 60_000 * MS)
                        .found())
                .isEmpty();
        assertThat(Run.armed(guarded(Begun.FINISH, not("warm")))
                        .on("lid", 60_000 * MS - 1)
                        .found())
                .containsExactly("permissive lid 59999999999");
    }

    @Test
    void a_stuck_input_proves_nothing() {
        final Run at = Run.armed(guarded(Begun.FINISH, is("warm"))).active("warm", 0);
        assertThat(at.on("lid", 90_000 * MS).found()).isEmpty();
        final Run past = Run.armed(guarded(Begun.FINISH, is("warm"))).active("warm", 0);
        assertThat(past.on("lid", 90_000 * MS + 1).found()).containsExactly("permissive lid 90000000001");
    }

    @Test
    void a_stroke_that_must_rest_has_one_period_for_it() {
        final Run run = Run.armed(guarded(Begun.REST, not("reach"))).on("lid", 1000 * MS);
        assertThat(run.active("reach", 1105 * MS).off("lid", 1115 * MS).found()).isEmpty();
    }

    @Test
    void a_stroke_that_rests_a_nanosecond_later_is_late() {
        final Run run = Run.armed(guarded(Begun.REST, not("reach"))).on("lid", 1000 * MS);
        assertThat(run.active("reach", 1105 * MS).off("lid", 1115 * MS + 1).found())
                .containsExactly("permissive lid 1115000001");
    }

    @Test
    void a_stroke_must_rest_even_when_the_level_comes_back_at_once() {
        final Run run = Run.armed(guarded(Begun.REST, not("reach"))).on("lid", 1000 * MS);
        run.active("reach", 1101 * MS).inactive("reach", 1104 * MS);
        assertThat(run.idle(3000 * MS).found()).containsExactly("permissive lid 1111000001");
    }

    @Test
    void a_stroke_that_may_finish_is_not_judged_once_it_has_begun() {
        final Run run = Run.armed(guarded(Begun.FINISH, not("reach"))).on("lid", 1000 * MS);
        assertThat(run.active("reach", 1001 * MS)
                        .idle(9000 * MS)
                        .look(9000 * MS)
                        .found())
                .isEmpty();
    }

    @Test
    void an_output_that_the_interlock_does_not_name_is_free() {
        final Run run = Run.armed(guarded(Begun.REST, is("air-ok"))).on("lamp", 1000 * MS);
        assertThat(run.active("reach", 1001 * MS).idle(9000 * MS).found()).isEmpty();
    }
}
