package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.simulator.referee.TestRig.MS;
import static slackwater.simulator.referee.TestRig.ms;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slackwater.model.Facts;
import slackwater.model.Interlock;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.kind.Family;

final class OneAtATimeTest {
    private static TestRig bang(final long clearMs) {
        return new TestRig()
                .output("lid", Family.VALVE)
                .output("jet", Family.VALVE)
                .output("crab", Family.CONTACT, Limits.NONE, Load.NONE, new Facts(Map.of("run-time", ms(6000))))
                .output("lamp", Family.LAMP)
                .interlock(new Interlock.Exclusion("one-bang", List.of("lid", "jet", "crab"), ms(clearMs)));
    }

    @Test
    void the_second_may_start_when_the_first_has_rested_for_the_clear_after_time() {
        assertThat(Run.armed(bang(500))
                        .pulse("lid", 0, 300 * MS)
                        .on("jet", 800 * MS)
                        .found())
                .isEmpty();
    }

    @Test
    void a_nanosecond_sooner_it_may_not() {
        final Run run = Run.armed(bang(500)).pulse("lid", 0, 300 * MS).on("jet", 800 * MS - 1);
        assertThat(run.found()).containsExactly("exclusion jet 799999999");
    }

    @Test
    void both_at_the_same_moment_is_one_too_many() {
        final Run run = Run.armed(bang(0));
        run.setOutput("lid", true);
        run.setOutput("jet", true);
        assertThat(run.look(10 * MS).found()).containsExactly("exclusion jet 10000000");
    }

    @Test
    void without_a_clear_after_time_one_may_follow_the_other_at_once() {
        final Run run = Run.armed(bang(0)).on("jet", 0);
        run.setOutput("lid", true);
        run.setOutput("jet", false);
        assertThat(run.look(10 * MS).found()).isEmpty();
    }

    @Test
    void a_bought_prop_counts_until_its_run_is_over_and_clear() {
        assertThat(Run.armed(bang(500))
                        .pulse("crab", 0, 500 * MS)
                        .on("lid", 6500 * MS)
                        .found())
                .isEmpty();
        assertThat(Run.armed(bang(500))
                        .pulse("crab", 0, 500 * MS)
                        .on("lid", 6500 * MS - 1)
                        .found())
                .containsExactly("exclusion lid 6499999999");
    }

    @Test
    void an_output_outside_the_exclusion_and_the_same_output_again_are_free() {
        assertThat(Run.armed(bang(500))
                        .pulse("lid", 0, 10 * MS)
                        .on("lid", 20 * MS)
                        .on("lamp", 30 * MS)
                        .found())
                .isEmpty();
    }
}
