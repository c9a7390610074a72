package slackwater.simulator.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.io.StringWriter;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.model.Mode;
import slackwater.simulator.bench.Examples;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.report.Evening;
import slackwater.simulator.report.Recording;
import slackwater.simulator.report.VcdReader;
import slackwater.simulator.report.VcdWriter;
import slackwater.simulator.visitor.Being;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Visitor;

final class EveningRunTest {
    private static final Duration AFTER_OPENING = Duration.ofMinutes(20);

    @ParameterizedTest
    @CsvSource({
        "first,1",
        "first,2",
        "driftwood,1",
        "driftwood,2",
        "driftwood,3",
        "sea-cave,1",
        "sea-cave,2",
        "sea-cave,3"
    })
    void no_example_breaks_a_rule_in_an_hour_and_a_half(final String rig, final long seed) {
        final Evening evening =
                run(Examples.evening(rig, seed, Duration.ofMinutes(90))).evening();
        assertThat(evening.violations()).isEmpty();
        // nobody stands before the first rig's sensor, which has no place on a plan
        assertThat(evening.tallies().cuesStarted().values().stream().anyMatch(count -> count > 0))
                .isEqualTo(!rig.equals("first"));
    }

    @ParameterizedTest
    @CsvSource({"first,porch", "driftwood,log", "sea-cave,north", "sea-cave,south"})
    void the_keeper_opens_every_example(final String rig, final String controller) {
        final VirtualBench bench =
                new EveningRun(Examples.evening(rig, 1, Duration.ofMinutes(30), Crowd.NOBODY)).bench();
        bench.runTo(AFTER_OPENING.toNanos());
        assertThat(bench.scan(controller).image().zoneMode).containsOnly(Mode.ARMED);
    }

    @Test
    void a_recorded_evening_played_back_has_the_same_digest() throws Exception {
        final EveningPlan plan = Examples.evening("sea-cave", 5, Duration.ofMinutes(40));
        final EveningRun.Result first = run(plan);
        final StringWriter written = new StringWriter();
        VcdWriter.write(first.lanes(), written);
        final Recording recording = VcdReader.read(new StringReader(written.toString()), "evening.vcd", line -> true);
        final EveningRun.Result again = run(new EveningPlan(
                plan.rig(),
                plan.show(),
                plan.codes(),
                plan.seed(),
                plan.startEpochMs(),
                plan.lasts(),
                Crowd.NOBODY,
                Optional.of(recording),
                true));
        assertThat(first.evening().tallies().cuesStarted().values()).anyMatch(count -> count > 2);
        assertThat(again.evening().digest()).isEqualTo(first.evening().digest());
        assertThat(again.evening().violations()).isEmpty();
    }

    @Test
    void a_small_child_alone_is_greeted_without_a_bang() {
        final Evening evening = run(Examples.evening(
                        "sea-cave", 1, Duration.ofMinutes(30), walker(Being.SMALL_CHILD, 0.95)))
                .evening();
        assertThat(evening.visits().startledByMistake()).isZero();
        assertThat(evening.tallies().actuations().get("north-clam-lid")).isZero();
        assertThat(evening.tallies().actuations().get("north-lightning")).isZero();
        assertThat(evening.visits().greeted()).isEqualTo(1);
    }

    @Test
    void a_grown_up_alone_gets_the_clam() {
        final Evening evening = run(Examples.evening("sea-cave", 1, Duration.ofMinutes(30), walker(Being.ADULT, 1.75)))
                .evening();
        assertThat(evening.tallies().actuations().get("north-clam-lid")).isEqualTo(1);
        assertThat(evening.visits().greeted()).isEqualTo(1);
        assertThat(evening.visits().startledByMistake()).isZero();
    }

    /** One walker along the way from west to east, at 1 m/s, a while after the opening. */
    private static Crowd walker(final Being being, final double heightM) {
        final long fromNs = Duration.ofMinutes(22).toNanos();
        return Crowd.of(List.of(Visitor.of(
                new Visitor.Body(0, 0, being, heightM),
                new long[] {fromNs, fromNs + Duration.ofSeconds(28).toNanos()},
                new double[] {0, 28},
                new double[] {0, 0})));
    }

    private static EveningRun.Result run(final EveningPlan plan) {
        return new EveningRun(plan).run(share -> {}, () -> 0L);
    }
}
