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

final class CurrentSumTest {
    private static TestRig supply(final double limitA, final Map<String, Double> shares) {
        final TestRig rig = new TestRig();
        for (final String name : List.of("fan", "jet", "south-fan")) {
            rig.output(name, Family.FAN, Limits.NONE, new Load(0.4, 1.2, ms(300)), Facts.NONE);
        }
        rig.output("lamp", Family.LAMP, Limits.NONE, new Load(50, 50, ms(0)), Facts.NONE);
        return rig.interlock(new Interlock.LoadLimit("supply", List.of("fan", "jet", "south-fan"), limitA, shares));
    }

    @Test
    void a_sum_at_the_limit_is_allowed_and_a_little_more_is_not() {
        assertThat(Run.armed(supply(2.4, Map.of()))
                        .on("fan", 0)
                        .on("jet", 10 * MS)
                        .found())
                .isEmpty();
        assertThat(Run.armed(supply(2.3999, Map.of()))
                        .on("fan", 0)
                        .on("jet", 10 * MS)
                        .found())
                .containsExactly("load-limit jet 10000000");
    }

    @Test
    void the_inrush_counts_for_its_time_and_then_the_steady_current() {
        assertThat(Run.armed(supply(1.6, Map.of()))
                        .on("fan", 0)
                        .on("jet", 300 * MS)
                        .found())
                .isEmpty();
        assertThat(Run.armed(supply(1.6, Map.of()))
                        .on("fan", 0)
                        .on("jet", 300 * MS - 1)
                        .found())
                .containsExactly("load-limit jet 299999999");
    }

    @Test
    void two_at_the_same_moment_are_summed() {
        final Run run = Run.armed(supply(2.3, Map.of()));
        run.setOutput("fan", true);
        run.setOutput("jet", true);
        assertThat(run.look(10 * MS).found()).containsExactly("load-limit jet 10000000");
    }

    @Test
    void what_rests_no_longer_counts_and_what_is_not_named_never_does() {
        assertThat(Run.armed(supply(1.2, Map.of()))
                        .on("lamp", 0)
                        .pulse("fan", 1, 10 * MS)
                        .on("jet", 20 * MS)
                        .found())
                .isEmpty();
    }

    @Test
    void each_controller_is_held_to_its_own_share() {
        final Run run = Run.armed(supply(4.8, Map.of("north", 2.4, "south", 1.1)));
        run.on("fan", 0).on("jet", 10 * MS).on("south-fan", 20 * MS);
        assertThat(run.found()).containsExactly("load-limit south-fan 20000000");
    }

    @Test
    void the_whole_is_judged_beside_the_shares() {
        final Run run = Run.armed(supply(2.4, Map.of("north", 2.4, "south", 2.4)));
        assertThat(run.on("fan", 0).on("south-fan", 1).on("jet", 2).found()).containsExactly("load-limit jet 2");
    }
}
