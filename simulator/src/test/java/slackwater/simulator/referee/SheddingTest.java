package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.simulator.referee.TestRig.MS;
import static slackwater.simulator.referee.TestRig.is;
import static slackwater.simulator.referee.TestRig.ms;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.Interlock;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

/** What is shed when something gets scarce, judged from levels alone. The scan is 10 ms. */
final class SheddingTest {
    /** The pressure is there since 100 ms and is proven 100 ms later. */
    private static Run plenty() {
        final TestRig rig = new TestRig()
                .output("jet", Family.VALVE)
                .output("bell", Family.SOUNDER)
                .output("lid", Family.VALVE)
                .output("lamp", Family.LAMP)
                .input("plenty", InputFamily.PRESSURE, ms(100), ms(100))
                .interlock(new Interlock.Shed("thin", List.of("jet", "bell", "lid"), List.of(is("plenty")), ms(2_000)));
        return Run.armed(rig).active("plenty", 100 * MS);
    }

    @Test
    void while_there_is_plenty_everything_may_start() {
        final Run run = plenty().on("jet", 1000 * MS).on("bell", 1001 * MS).on("lid", 9000 * MS);
        assertThat(run.found()).isEmpty();
    }

    @Test
    void the_first_needs_it_proven_with_no_allowance() {
        assertThat(plenty().on("jet", 200 * MS).found()).isEmpty();
        assertThat(plenty().on("jet", 200 * MS - 1).found()).containsExactly("shed jet 199999999");
        assertThat(plenty().inactive("plenty", 1000 * MS).on("jet", 1000 * MS).found())
                .containsExactly("shed jet 1000000000");
    }

    @Test
    void the_second_may_start_until_its_time_and_a_scan_have_passed() {
        final Run before = plenty().inactive("plenty", 1000 * MS).on("bell", 3010 * MS - 1);
        assertThat(before.found()).isEmpty();
        final Run at = plenty().inactive("plenty", 1000 * MS).on("bell", 3010 * MS);
        assertThat(at.found()).containsExactly("shed bell 3010000000");
    }

    @Test
    void the_third_waits_twice_as_long() {
        final Run before = plenty().inactive("plenty", 1000 * MS).on("lid", 5010 * MS - 1);
        assertThat(before.found()).isEmpty();
        final Run at = plenty().inactive("plenty", 1000 * MS).on("lid", 5010 * MS);
        assertThat(at.found()).containsExactly("shed lid 5010000000");
    }

    @Test
    void once_it_is_proven_again_all_may_start_and_the_times_begin_anew() {
        final Run run = plenty().inactive("plenty", 1000 * MS).active("plenty", 6000 * MS);
        run.pulse("lid", 6100 * MS, 6200 * MS).inactive("plenty", 6300 * MS);
        assertThat(run.on("bell", 8310 * MS - 1).found()).isEmpty();
    }

    @Test
    void a_pressure_that_comes_back_for_less_than_its_proving_time_does_not_count() {
        final Run run = plenty().inactive("plenty", 1000 * MS).active("plenty", 2000 * MS);
        run.inactive("plenty", 2100 * MS - 1);
        assertThat(run.on("bell", 3010 * MS).found()).containsExactly("shed bell 3010000000");
    }

    @Test
    void a_stroke_begun_and_what_the_list_does_not_name_are_free() {
        final Run run = plenty().on("jet", 500 * MS).inactive("plenty", 1000 * MS);
        assertThat(run.on("lamp", 9000 * MS).idle(20_000 * MS).found()).isEmpty();
    }

    @Test
    void a_copy_goes_on_with_its_own_past() {
        final Run run = plenty().inactive("plenty", 1000 * MS);
        final Referee copy = run.referee.copy();
        run.active("plenty", 1500 * MS).on("bell", 3010 * MS);
        assertThat(run.found()).isEmpty();
        run.setInput("plenty", false);
        copy.look(3010 * MS, run.yard);
        assertThat(copy.violations()).extracting(Violation::rule).containsExactly("shed");
    }
}
