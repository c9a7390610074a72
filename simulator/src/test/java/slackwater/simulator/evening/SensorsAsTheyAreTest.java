package slackwater.simulator.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.event.Event;
import slackwater.simulator.bench.BenchListener;
import slackwater.simulator.bench.Examples;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.visitor.Crowd;

/** Sensors as they are (S23), and a reach that somebody is in (S1), on the examples. */
final class SensorsAsTheyAreTest {
    private static final Duration OPEN = Duration.ofMinutes(20);

    @Test
    void three_pulses_while_the_sensor_warms_up_start_nothing_and_one_afterwards_does() {
        final List<String> started = new ArrayList<>();
        final VirtualBench bench = opened("first", started, Duration.ZERO);
        for (int pulse = 0; pulse < 3; pulse++) {
            press(bench, "path", 1_000);
        }
        bench.runTo(Duration.ofSeconds(80).toNanos());
        assertThat(started).isEmpty();
        press(bench, "path", 1_000);
        assertThat(started).containsExactly("greet");
        assertThat(bench.violations()).isEmpty();
    }

    @Test
    void a_group_that_lingers_for_ninety_seconds_is_greeted_once_and_the_next_one_again() {
        final List<String> started = new ArrayList<>();
        final VirtualBench bench = opened("driftwood", started, OPEN);
        press(bench, "path", 90_000);
        assertThat(started).containsExactly("breathe");
        bench.advance(Duration.ofSeconds(20));
        press(bench, "path", 1_000);
        assertThat(started).containsExactly("breathe", "breathe");
        assertThat(bench.violations()).isEmpty();
    }

    @Test
    void a_burst_of_fog_through_the_reach_curtain_is_a_greeting_lost_with_a_reason_and_no_violation() {
        final List<String> told = new ArrayList<>();
        final VirtualBench bench = opened("sea-cave", told, OPEN).set("north-reach", true);
        press(bench, "north-path-inner", 500);
        press(bench, "north-beam-high", 500);
        assertThat(told).contains("lost north-clam: not provided: not north-reach");
        assertThat(bench.isEnergised("north-clam-lid")).isFalse();
        assertThat(bench.violations()).isEmpty();
    }

    @Test
    void the_lid_finishes_its_stroke_with_somebody_in_the_reach_and_starts_no_other() {
        for (final String cut : List.of("nothing", "curtain", "stop", "air")) {
            final VirtualBench bench = lidUp(new ArrayList<>()).set("north-reach", true);
            bench.advance(Duration.ofMillis(20));
            assertThat(bench.isEnergised("north-clam-lid")).as(cut).isTrue();
            if (cut.equals("curtain")) {
                bench.inject("north-reach", java.util.Optional.of(new slackwater.simulator.yard.InputOverlay.Open()));
            } else if (cut.equals("air")) {
                bench.set("north-air-ok", false);
            }
            bench.pressStop(cut.equals("stop")).advance(Duration.ofMillis(20));
            assertThat(bench.isEnergised("north-clam-lid")).as(cut).isEqualTo(!cut.equals("stop"));
            bench.advance(Duration.ofSeconds(30));
            assertThat(bench.isEnergised("north-clam-lid")).as(cut).isFalse();
            assertThat(bench.violations()).as(cut).isEmpty();
        }
    }

    private static VirtualBench lidUp(final List<String> told) {
        final VirtualBench bench = opened("sea-cave", told, OPEN);
        press(bench, "north-path-outer", 500);
        press(bench, "north-path-inner", 500);
        press(bench, "north-beam-high", 500);
        for (int scan = 0; scan < 500 && !bench.isEnergised("north-clam-lid"); scan++) {
            bench.advance(Duration.ofMillis(10));
        }
        assertThat(bench.isEnergised("north-clam-lid")).isTrue();
        return bench.advance(Duration.ofMillis(100));
    }

    private static VirtualBench opened(final String rig, final List<String> told, final Duration until) {
        final VirtualBench bench =
                new EveningRun(Examples.evening(rig, 1, Duration.ofMinutes(30), Crowd.NOBODY)).bench();
        bench.listen(new BenchListener() {
            @Override
            public void event(final int controller, final Event event) {
                if (event instanceof Event.CueStarted started) {
                    told.add(started.cue());
                } else if (event instanceof Event.StartLost lost && lost.cue().equals("north-clam")) {
                    told.add("lost " + lost.cue() + ": " + lost.why());
                }
            }
        });
        return bench.runTo(until.toNanos());
    }

    private static void press(final VirtualBench bench, final String input, final int ms) {
        bench.set(input, true).advance(Duration.ofMillis(ms));
        bench.set(input, false).advance(Duration.ofMillis(500));
    }
}
