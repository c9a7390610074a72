package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.simulator.referee.TestRig.MS;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.model.Facts;
import slackwater.model.Interlock;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.kind.Family;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Quantity;

final class FlashCountTest {
    private static TestRig strobes(final int limit, final Map<String, Integer> shares) {
        final Facts eightHertz = new Facts(Map.of("flash-rate", new Quantity(8, Dimension.FREQUENCY, "8 Hz")));
        return new TestRig()
                .output("flash", Family.STROBE)
                .output("south-flash", Family.STROBE)
                .output("lamp", Family.LAMP)
                .output("disco", Family.STROBE, Limits.NONE, Load.NONE, eightHertz)
                .interlock(new Interlock.FlashLimit("seen", List.of("flash", "south-flash", "disco"), limit, shares));
    }

    private static List<String> flashing(final int limit, final String onsetsMs) {
        final Run run = Run.armed(strobes(limit, Map.of()));
        for (final String onset : onsetsMs.split(" ")) {
            final long atNs = Long.parseLong(onset) * MS;
            run.pulse("flash", atNs, atNs + 20 * MS);
        }
        return run.found();
    }

    /** Cases 1 to 5, 8 and 9 of handbook 4.3, which counts by the criterion WCAG 2.x SC 2.3.1. */
    @ParameterizedTest
    @CsvSource({
        "0 333 667 1000 1333 1667, 3",
        "0 250 500 750, 4",
        "0 200 400 1100, 3",
        "0 300 600 950, 4",
        "0 350 700 1050, 3",
        "0 100 200 1200 1300 1400, 3",
        "0 100 200 950 1050 1150, 4"
    })
    void the_most_onsets_in_a_second_are_those_of_the_handbook(final String onsetsMs, final int most) {
        assertThat(flashing(most, onsetsMs)).isEmpty();
        assertThat(flashing(most - 1, onsetsMs)).isNotEmpty();
    }

    @Test
    void an_onset_exactly_a_second_later_is_in_the_next_second() {
        assertThat(flashing(1, "0 1000")).isEmpty();
        assertThat(flashing(1, "0 990")).containsExactly("flash-limit flash 990000000");
    }

    /** Handbook 4.3 case 6: 4 in a second, fails at 3. */
    @Test
    void two_strobes_of_two_hertz_each_make_four_flashes_when_offset() {
        assertThat(twoStrobes(3, 250)).containsExactly("flash-limit south-flash 750000000");
        assertThat(twoStrobes(4, 250)).isEmpty();
    }

    /** Handbook 4.3 case 7: in phase they are seen as 2. */
    @Test
    void two_strobes_in_phase_are_seen_as_one() {
        assertThat(twoStrobes(2, 0)).isEmpty();
        assertThat(twoStrobes(2, 19)).isEmpty();
        assertThat(twoStrobes(2, 20)).isNotEmpty();
    }

    private static List<String> twoStrobes(final int limit, final long offsetMs) {
        final Run run = Run.armed(strobes(limit, Map.of()));
        for (long at = 0; at < 2000; at += 500) {
            run.on("flash", at * MS).on("south-flash", (at + offsetMs) * MS);
            run.off("flash", (at + offsetMs + 1) * MS).off("south-flash", (at + offsetMs + 2) * MS);
        }
        return run.found();
    }

    @Test
    void flashes_of_one_lamp_are_never_taken_for_one() {
        final Run run = Run.armed(strobes(2, Map.of()));
        run.pulse("flash", 0, 5 * MS).pulse("flash", 10 * MS, 15 * MS).pulse("flash", 20 * MS, 25 * MS);
        assertThat(run.found()).containsExactly("flash-limit flash 20000000");
    }

    @Test
    void a_strobe_of_eight_hertz_powered_for_a_second_counts_eight() {
        assertThat(Run.armed(strobes(8, Map.of())).pulse("disco", 0, 1000 * MS).found())
                .isEmpty();
        assertThat(Run.armed(strobes(7, Map.of())).pulse("disco", 0, 1000 * MS).found())
                .containsExactly("flash-limit disco 875000000");
    }

    @Test
    void its_own_flashes_are_counted_without_an_edge_and_the_breach_is_reported_once() {
        final Run run = Run.armed(strobes(3, Map.of())).on("disco", 0);
        assertThat(run.idle(60_000 * MS).found()).containsExactly("flash-limit disco 375000000");
    }

    @Test
    void its_own_flashes_end_with_its_power() {
        final Run at = Run.armed(strobes(1, Map.of())).pulse("disco", 0, 125 * MS);
        assertThat(at.idle(500 * MS).found()).isEmpty();
        final Run past = Run.armed(strobes(1, Map.of())).pulse("disco", 0, 125 * MS + 1);
        assertThat(past.found()).containsExactly("flash-limit disco 125000000");
    }

    @Test
    void a_breach_that_ended_is_reported_anew() {
        assertThat(flashing(1, "0 500 3000 3500"))
                .containsExactly("flash-limit flash 500000000", "flash-limit flash 3500000000");
    }

    @Test
    void each_controller_is_held_to_its_own_share() {
        final Run run = Run.armed(strobes(4, Map.of("north", 3, "south", 1)));
        run.pulse("south-flash", 0, 10 * MS).pulse("south-flash", 500 * MS, 510 * MS);
        assertThat(run.found()).containsExactly("flash-limit south-flash 500000000");
    }

    @Test
    void a_share_of_none_allows_no_flash_at_all() {
        final Run run = Run.armed(strobes(4, Map.of("north", 4, "south", 0)));
        assertThat(run.on("south-flash", 0).found()).containsExactly("flash-limit south-flash 0");
    }

    @Test
    void a_lamp_that_is_not_listed_may_blink() {
        final Run run = Run.armed(strobes(1, Map.of()));
        for (long at = 0; at < 10; at++) {
            run.pulse("lamp", at * 100 * MS, (at * 100 + 50) * MS);
        }
        assertThat(run.found()).isEmpty();
    }
}
