package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.simulator.referee.TestRig.MS;

import org.junit.jupiter.api.Test;
import slackwater.model.kind.Family;

/** No interlock is in these rigs: harm shows by itself. */
final class HarmTest {
    private static Run yard() {
        return Run.armed(new TestRig()
                .output("lid", Family.VALVE)
                .output("pump", Family.PUMP)
                .output("mist", Family.MISTER));
    }

    @Test
    void a_pump_that_starts_cold_is_wrong_at_once() {
        assertThat(yard().hot("pump", false, 0).on("pump", 10 * MS).found()).containsExactly("cold-pump pump 10000000");
    }

    @Test
    void a_pump_whose_block_cools_has_one_period() {
        assertThat(yard().on("pump", 0)
                        .hot("pump", false, 100 * MS)
                        .off("pump", 110 * MS)
                        .found())
                .isEmpty();
        assertThat(yard().on("pump", 0)
                        .hot("pump", false, 100 * MS)
                        .idle(9000 * MS)
                        .found())
                .containsExactly("cold-pump pump 110000001");
    }

    @Test
    void a_cold_block_hurts_nobody_while_the_pump_has_no_power() {
        final Run run = yard().hot("pump", false, 0);
        run.yard.isOutputHigh[1] = false;
        assertThat(run.look(10 * MS).idle(9000 * MS).found()).isEmpty();
    }

    @Test
    void a_mister_that_starts_dry_is_wrong_at_once() {
        assertThat(yard().water("mist", false, 0).on("mist", 10 * MS).found())
                .containsExactly("dry-mist mist 10000000");
    }

    @Test
    void a_mister_that_runs_dry_has_one_second() {
        assertThat(yard().on("mist", 0)
                        .water("mist", false, 100 * MS)
                        .off("mist", 1100 * MS)
                        .found())
                .isEmpty();
        assertThat(yard().on("mist", 0)
                        .water("mist", false, 100 * MS)
                        .idle(9000 * MS)
                        .found())
                .containsExactly("dry-mist mist 1100000001");
    }

    @Test
    void water_that_comes_back_in_time_starts_the_second_again() {
        final Run run = yard().on("mist", 0).water("mist", false, 100 * MS).water("mist", true, 1000 * MS);
        assertThat(run.water("mist", false, 1010 * MS).off("mist", 2010 * MS).found())
                .isEmpty();
    }

    @Test
    void a_pump_that_starts_on_an_empty_bottle_is_wrong_at_once() {
        assertThat(yard().fluid("pump", false, 0).on("pump", 10 * MS).found())
                .containsExactly("dry-pump pump 10000000");
    }

    @Test
    void a_pump_whose_bottle_empties_while_it_runs_has_five_seconds() {
        assertThat(yard().on("pump", 0)
                        .fluid("pump", false, 100 * MS)
                        .off("pump", 5100 * MS)
                        .found())
                .isEmpty();
        assertThat(yard().on("pump", 0)
                        .fluid("pump", false, 100 * MS)
                        .idle(9000 * MS)
                        .found())
                .containsExactly("dry-pump pump 5100000001");
    }

    @Test
    void an_empty_bottle_hurts_nothing_while_the_pump_is_off_and_a_new_one_starts_the_five_seconds_again() {
        final Run run = yard().fluid("pump", false, 0).idle(9000 * MS);
        run.fluid("pump", true, 9000 * MS).on("pump", 9010 * MS).fluid("pump", false, 9100 * MS);
        run.fluid("pump", true, 14_000 * MS).fluid("pump", false, 14_010 * MS);
        assertThat(run.off("pump", 19_010 * MS).found()).isEmpty();
    }

    /** 1.69 J: handbook 1.11 case 11. */
    @Test
    void a_stroke_that_starts_with_somebody_in_the_reach_may_not_exceed_the_caution_energy() {
        final Run at = yard().people("lid", 1, 0).on("lid", 10 * MS).moves("lid", 1.69, 20 * MS);
        assertThat(at.found()).isEmpty();
        assertThat(at.moves("lid", 1.6901, 30 * MS).moves("lid", 5, 40 * MS).found())
                .containsExactly("moved-into-person lid 30000000");
    }

    @Test
    void each_such_stroke_is_reported() {
        final Run run = yard().people("lid", 1, 0).on("lid", 10 * MS).moves("lid", 3, 20 * MS);
        run.off("lid", 30 * MS).stands("lid", 40 * MS).on("lid", 50 * MS).moves("lid", 3, 60 * MS);
        assertThat(run.found()).containsExactly("moved-into-person lid 20000000", "moved-into-person lid 60000000");
    }

    @Test
    void somebody_who_walks_into_a_stroke_begun_is_a_near_miss() {
        final Run run = yard().on("lid", 10 * MS).moves("lid", 1, 20 * MS).people("lid", 1, 30 * MS);
        run.moves("lid", 4.5, 40 * MS).moves("lid", 2, 50 * MS);
        assertThat(run.found()).isEmpty();
        assertThat(run.referee.figures().nearMisses()).isEqualTo(1);
        assertThat(run.referee.figures().worstEnergyJ()).isEqualTo(4.5);
    }

    @Test
    void the_way_back_without_power_belongs_to_the_stroke_before_it() {
        final Run run = yard().on("lid", 10 * MS).moves("lid", 3, 20 * MS).stands("lid", 30 * MS);
        run.people("lid", 1, 40 * MS).off("lid", 50 * MS).moves("lid", 3, 60 * MS);
        assertThat(run.found()).isEmpty();
        assertThat(run.referee.figures().nearMisses()).isEqualTo(1);
    }

    @Test
    void somebody_who_left_and_another_who_came_later_is_a_near_miss() {
        final Run run = yard().people("lid", 1, 0).on("lid", 10 * MS).people("lid", 0, 20 * MS);
        assertThat(run.people("lid", 1, 30 * MS).moves("lid", 3, 40 * MS).found())
                .isEmpty();
    }

    @Test
    void somebody_beside_a_prop_at_rest_is_no_near_miss() {
        final Run run = yard().people("lid", 2, 0).on("lid", 10 * MS);
        assertThat(run.referee.figures().nearMisses()).isZero();
    }

    @Test
    void a_prop_that_moves_again_while_somebody_stands_there_is_met_again() {
        final Run run = yard().on("lid", 0).people("lid", 1, 10 * MS).moves("lid", 1, 20 * MS);
        run.stands("lid", 30 * MS).moves("lid", 1, 40 * MS);
        assertThat(run.referee.figures().outputs().get(0).nearMisses()).isEqualTo(2);
    }
}
