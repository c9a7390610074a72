package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.simulator.referee.TestRig.MS;
import static slackwater.simulator.referee.TestRig.limits;
import static slackwater.simulator.referee.TestRig.ms;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slackwater.model.Facts;
import slackwater.model.Input;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.kind.Family;

final class OwnLimitsTest {
    private static TestRig lid() {
        return new TestRig().limited("lid", Family.VALVE, limits(ms(2000), ms(1000)));
    }

    private static TestRig threeStarts() {
        final Limits limits =
                new Limits(Optional.empty(), Duration.ZERO, Optional.of(new Limits.Starts(3, ms(60_000))));
        return new TestRig().limited("lid", Family.VALVE, limits);
    }

    private static TestRig crab() {
        final Facts runs = new Facts(Map.of("run-time", ms(6000)));
        return new TestRig().output("crab", Family.CONTACT, Limits.NONE, Load.NONE, runs);
    }

    private static TestRig gull() {
        return new TestRig()
                .output("gull", Family.RELEASE)
                .button("hung", Input.Use.HUNG, new Facts(Map.of("of", "gull")));
    }

    @Test
    void resting_at_longest_on_and_one_period_is_in_time() {
        assertThat(Run.armed(lid()).pulse("lid", 100 * MS, 2110 * MS).found()).isEmpty();
    }

    @Test
    void resting_a_nanosecond_later_is_too_long() {
        assertThat(Run.armed(lid()).pulse("lid", 100 * MS, 2110 * MS + 1).found())
                .containsExactly("longest-on lid 2110000001");
    }

    @Test
    void an_output_left_on_is_found_without_any_edge_and_once() {
        final Run run = Run.armed(lid()).on("lid", 100 * MS);
        assertThat(run.referee.wakeNs()).isEqualTo(2110 * MS + 1);
        assertThat(run.idle(3_600_000 * MS).look(3_600_000 * MS).found()).containsExactly("longest-on lid 2110000001");
        assertThat(run.referee.wakeNs()).isEqualTo(Long.MAX_VALUE);
    }

    @Test
    void an_air_supply_may_stay_open_all_evening() {
        final TestRig rig = new TestRig().limited("air", Family.AIR_SUPPLY, limits(ms(1000), ms(0)));
        assertThat(Run.armed(rig)
                        .on("air", 0)
                        .idle(10_000 * MS)
                        .look(10_000 * MS)
                        .found())
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            names = {"AIR_SUPPLY"},
            mode = EnumSource.Mode.EXCLUDE)
    void every_other_family_is_held_to_the_longest_on_that_it_states(final Family family) {
        final TestRig rig = new TestRig().limited("it", family, limits(ms(1000), ms(0)));
        assertThat(Run.armed(rig).on("it", 0).idle(2000 * MS).found()).containsExactly("longest-on it 1010000001");
    }

    @Test
    void starting_at_the_shortest_off_is_allowed_and_a_nanosecond_sooner_is_not() {
        assertThat(Run.armed(lid())
                        .pulse("lid", 0, 500 * MS)
                        .on("lid", 1500 * MS)
                        .found())
                .isEmpty();
        assertThat(Run.armed(lid())
                        .pulse("lid", 0, 500 * MS)
                        .on("lid", 1500 * MS - 1)
                        .found())
                .containsExactly("shortest-off lid 1499999999");
    }

    @Test
    void a_fourth_start_exactly_a_span_after_the_first_is_allowed_and_a_nanosecond_sooner_is_not() {
        final Run at = Run.armed(threeStarts());
        final Run before = Run.armed(threeStarts());
        for (long start = 0; start < 3; start++) {
            at.pulse("lid", 1 + start * 100 * MS, start * 100 * MS + 50 * MS);
            before.pulse("lid", 1 + start * 100 * MS, start * 100 * MS + 50 * MS);
        }
        assertThat(at.on("lid", 60_000 * MS + 1).found()).isEmpty();
        assertThat(before.on("lid", 60_000 * MS).found()).containsExactly("starts lid 60000000000");
    }

    @Test
    void starts_are_counted_in_a_sliding_span_and_not_in_a_fixed_one() {
        final Run run = Run.armed(threeStarts());
        run.pulse("lid", 10_000 * MS, 10_001 * MS);
        run.pulse("lid", 50_000 * MS, 50_001 * MS);
        run.pulse("lid", 69_000 * MS, 69_001 * MS);
        run.pulse("lid", 70_000 * MS, 70_001 * MS);
        assertThat(run.on("lid", 109_999 * MS).found()).containsExactly("starts lid 109999000000");
    }

    @Test
    void a_bought_prop_may_be_pulsed_again_when_its_run_time_is_over_and_not_a_nanosecond_sooner() {
        assertThat(Run.armed(crab())
                        .pulse("crab", 0, 500 * MS)
                        .on("crab", 6000 * MS)
                        .found())
                .isEmpty();
        assertThat(Run.armed(crab())
                        .pulse("crab", 0, 500 * MS)
                        .on("crab", 6000 * MS - 1)
                        .found())
                .containsExactly("still-running crab 5999999999");
    }

    @Test
    void a_release_fires_once_until_it_is_seen_hung_again() {
        final Run run = Run.armed(gull()).pulse("gull", 0, 500 * MS);
        assertThat(run.active("hung", 600 * MS)
                        .pulse("gull", 1000 * MS, 1500 * MS)
                        .found())
                .isEmpty();
        assertThat(run.inactive("hung", 1600 * MS).on("gull", 2000 * MS).found())
                .containsExactly("spent gull 2000000000");
    }

    @Test
    void a_release_hung_by_hand_may_fire_again() {
        final Run run = Run.armed(gull()).pulse("gull", 0, 500 * MS);
        assertThat(run.act(new Act.Hung("gull", "Ole"), 600 * MS)
                        .on("gull", 700 * MS)
                        .found())
                .isEmpty();
    }
}
