package slackwater.simulator.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.controller.latch.Kept;
import slackwater.model.Output;
import slackwater.model.event.Refusal;
import slackwater.simulator.sabotage.Quay;
import slackwater.simulator.sabotage.Scenes;
import slackwater.simulator.yard.InputOverlay;
import slackwater.simulator.yard.OutputOverlay;

/** What no careless controller survives: stops, hung computers and broken parts in mid-stroke (S2, S7, S10). */
final class SafetyOnTheBenchTest {
    private static final Quay.Set QUAY = Quay.byKey();

    @Test
    void a_stop_loop_that_opens_for_less_than_a_scan_stops_and_latches() {
        final VirtualBench bench = lidUp().pulse("stop-loop");
        assertThat(bench.isEnergised("lid")).isTrue();
        pass(bench, 10);
        assertThat(bench.isEnergised("lid")).isFalse();
        assertThat(pass(bench, 5_000).whyNot("lid").get(0).observed()).isEqualTo("in zone yard it has been stopped");
    }

    @Test
    void a_stop_in_mid_stroke_kills_the_load_at_once_and_rests_every_pin_within_one_period() {
        final VirtualBench bench = lidUp();
        assertThat(bench.yard().isPowered(index("lid"))).isTrue();
        bench.pressStop(true);
        assertThat(bench.yard().isPowered(index("lid"))).isFalse();
        pass(bench, 10);
        for (final Output output : QUAY.rig().outputs()) {
            assertThat(bench.isEnergised(output.name())).as(output.name()).isFalse();
        }
        assertThat(bench.violations()).isEmpty();
        assertThat(bench.referee().figures().worstStopToRestNs()).isLessThanOrEqualTo(10_000_000L);
    }

    @Test
    void a_computer_that_hangs_longer_than_the_drop_out_in_mid_stroke_finds_its_relay_open_and_fires_nothing_again() {
        final VirtualBench bench = lidUp().freeze("quay", true);
        assertThat(pass(bench, 390).yard().isSupplied(0)).isTrue();
        assertThat(pass(bench, 20).yard().isSupplied(0)).isFalse();
        assertThat(bench.isEnergised("lid")).isTrue();
        pass(bench.freeze("quay", false), 10);
        assertThat(bench.isEnergised("lid")).isFalse();
        Scenes.ask(pass(bench, 3_000), "lid");
        assertThat(pass(bench, 1_000).yard().isSupplied(0)).isFalse();
        assertThat(bench.referee().figures().outputs().get(index("lid")).starts())
                .isEqualTo(1);
        assertThat(bench.violations()).isEmpty();
    }

    @Test
    void a_computer_that_hangs_shorter_than_the_drop_out_goes_on() {
        final VirtualBench bench = lidUp().freeze("quay", true);
        pass(pass(bench, 300).freeze("quay", false), 10);
        assertThat(bench.isEnergised("lid")).isTrue();
        assertThat(pass(bench, 100).yard().isSupplied(0)).isTrue();
        pass(bench, 2_000);
        assertThat(bench.isEnergised("lid")).isFalse();
        assertThat(bench.violations()).isEmpty();
    }

    @Test
    void a_beam_that_is_stuck_or_chatters_refuses_and_a_healed_one_permits_again() {
        for (final InputOverlay fault : List.of(new InputOverlay.StuckHigh(), new InputOverlay.Chatter(60_000_000L))) {
            final VirtualBench bench = Scenes.armed(bench()).inject("reach", Optional.of(fault));
            pass(Scenes.ask(pass(bench, 1_000), "lid"), 200);
            assertThat(bench.isEnergised("lid")).as(fault.toString()).isFalse();
            pass(bench.inject("reach", Optional.empty()), 1_000);
            pass(Scenes.ask(bench, "lid"), 200);
            assertThat(bench.isEnergised("lid")).as(fault + ", healed").isTrue();
            assertThat(bench.violations()).isEmpty();
        }
    }

    @Test
    void a_welded_contact_that_reads_back_stops_the_pulses_so_that_the_relay_takes_its_power_away() {
        final VirtualBench bench = Scenes.armed(bench()).injectOutput("bell", Optional.of(OutputOverlay.WELDED));
        pass(bench, 600);
        assertThat(bench.yard().isSupplied(0)).isFalse();
        assertThat(bench.yard().isPowered(index("bell"))).isFalse();
        assertThat(bench.whyNot("lid").get(0).observed()).isEqualTo("in zone yard it has been faulted");
        assertThat(bench.violations()).isEmpty();
    }

    @Test
    void every_reason_is_told_whole() {
        final VirtualBench bench = pass(Scenes.tried(bench()).set("reach", true), 1_000);
        assertThat(bench.whyNot("lid"))
                .extracting(refusal -> refusal.text(bench.nowNs()))
                .containsExactly(
                        "lid may not: \"mode\" refuses because in zone yard it has been resting for 4.9 s; clears when zone"
                                + " yard is armed",
                        "lid may not: \"reach-clear\" refuses because reach has been active for 990 ms; clears when reach is"
                                + " proven inactive");
        assertThat(Scenes.armed(bench()).whyNot("lid")).isEmpty();
    }

    @Test
    void deeds_of_one_moment_are_done_in_the_order_in_which_they_were_given() {
        final List<String> done = new ArrayList<>();
        bench().at(Duration.ofSeconds(2), yard -> done.add("third"))
                .at(Duration.ofSeconds(1), yard -> done.add("first"))
                .at(Duration.ofSeconds(1), yard -> done.add("second"))
                .advance(Duration.ofSeconds(2));
        assertThat(done).containsExactly("first", "second", "third");
    }

    @Test
    void what_outlived_the_last_run_is_remembered() {
        final Kept kept = new Kept(List.of("stop"), Map.of("output jet", List.of("Ole")), List.of("gull"), -1);
        final VirtualBench bench =
                pass(new VirtualBench(Scenes.setup(QUAY.rig(), QUAY.show()).remembering(kept)), 100);
        assertThat(bench.whyNot("lid").get(0).observed()).isEqualTo("in zone yard it has been stopped");
        assertThat(bench.whyNot("gull")).extracting(Refusal::rule).contains("one shot");
        final VirtualBench armed = Scenes.armed(
                new VirtualBench(Scenes.setup(QUAY.rig(), QUAY.show()).remembering(kept)));
        assertThat(armed.whyNot("lid")).isEmpty();
        assertThat(armed.whyNot("jet").get(0).observed()).contains("locked out");
        assertThat(armed.whyNot("gull")).extracting(Refusal::rule).containsExactly("one shot");
    }

    private static VirtualBench bench() {
        return new VirtualBench(Scenes.setup(QUAY.rig(), QUAY.show()));
    }

    private static VirtualBench lidUp() {
        final VirtualBench bench = pass(Scenes.ask(Scenes.armed(bench()), "lid"), 200);
        assertThat(bench.isEnergised("lid")).isTrue();
        return bench;
    }

    private static int index(final String output) {
        return QUAY.rig().outputs().indexOf(QUAY.rig().output(output).orElseThrow());
    }

    private static VirtualBench pass(final VirtualBench bench, final int ms) {
        return bench.advance(Duration.ofMillis(ms));
    }
}
