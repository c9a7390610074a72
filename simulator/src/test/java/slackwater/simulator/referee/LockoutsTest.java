package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static slackwater.simulator.referee.TestRig.MS;

import org.junit.jupiter.api.Test;
import slackwater.model.kind.Family;

final class LockoutsTest {
    private static Run banks() {
        return Run.armed(new TestRig()
                .output("lid", Family.VALVE)
                .output("jet", Family.VALVE)
                .output("south-lid", Family.VALVE));
    }

    @Test
    void a_locked_output_does_not_start_and_its_neighbour_may() {
        final Run run = banks().act(new Act.Lockout("lid", "Maren"), 100 * MS);
        assertThat(run.on("jet", 100 * MS).on("lid", 200 * MS).found()).containsExactly("lockout lid 200000000");
    }

    @Test
    void a_start_at_the_moment_of_the_lockout_is_wrong() {
        final Run run = banks().act(new Act.Lockout("lid", "Maren"), 100 * MS);
        run.setOutput("lid", true);
        assertThat(run.look(100 * MS).found()).containsExactly("lockout lid 100000000");
    }

    @Test
    void a_locked_zone_locks_all_that_is_in_it() {
        final Run run = banks().act(new Act.Lockout("north", "Maren"), 100 * MS);
        assertThat(run.on("south-lid", 150 * MS)
                        .on("lid", 200 * MS)
                        .on("jet", 201 * MS)
                        .found())
                .containsExactly("lockout lid 200000000", "lockout jet 201000000");
    }

    @Test
    void it_stays_locked_until_every_name_is_off() {
        final Run run = banks().act(new Act.Lockout("lid", "Maren"), 100 * MS)
                .act(new Act.Lockout("lid", "Ole"), 110 * MS)
                .act(new Act.Unlock("lid", "Maren"), 120 * MS);
        assertThat(run.pulse("lid", 200 * MS, 210 * MS).found()).containsExactly("lockout lid 200000000");
        assertThat(run.act(new Act.Unlock("lid", "Ole"), 300 * MS)
                        .on("lid", 400 * MS)
                        .found())
                .hasSize(1);
    }

    @Test
    void another_name_takes_no_lock_away() {
        final Run run =
                banks().act(new Act.Lockout("lid", "Maren"), 100 * MS).act(new Act.Unlock("lid", "Ole"), 120 * MS);
        assertThat(run.on("lid", 200 * MS).found()).containsExactly("lockout lid 200000000");
    }

    @Test
    void what_is_energised_has_one_period_to_rest() {
        final Run at = banks().on("lid", 0).act(new Act.Lockout("north", "Maren"), 103 * MS);
        assertThat(at.off("lid", 113 * MS).found()).isEmpty();
        final Run past = banks().on("lid", 0).act(new Act.Lockout("north", "Maren"), 103 * MS);
        assertThat(past.idle(9000 * MS).found()).containsExactly("lockout lid 113000001");
    }

    @Test
    void a_target_that_the_rig_does_not_have_is_refused() {
        assertThatThrownBy(() -> banks().act(new Act.Lockout("lyd", "Maren"), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lyd");
    }
}
