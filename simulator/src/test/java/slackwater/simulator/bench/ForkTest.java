package slackwater.simulator.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.Controller;
import slackwater.model.Input;
import slackwater.model.Rig;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.evening.EveningRun;
import slackwater.simulator.yard.InputOverlay;

/** A fork goes the same way by itself, and passing over quiet scans changes nothing (design, section 3; S21). */
final class ForkTest {
    private static final Duration STEP = Duration.ofSeconds(20);
    private static final int MOMENTS = 20;
    private static final int HANDS = 60;

    @Test
    void a_fork_of_the_sea_cave_goes_the_same_way_from_twenty_moments() {
        final EveningPlan plan = Examples.evening("sea-cave", 11, Duration.ofMinutes(45));
        final VirtualBench bench = new EveningRun(plan).bench();
        final Random random = new Random(11);
        long atNs = Duration.ofMinutes(17).toNanos();
        for (int moment = 0; moment < MOMENTS; moment++) {
            atNs += random.nextInt(60_000) * 1_000_000L;
            bench.runTo(atNs);
            final VirtualBench fork = bench.fork();
            bench.advance(STEP);
            fork.advance(STEP);
            assertThat(fork.digest()).as("from %d ns", atNs).isEqualTo(bench.digest());
            assertThat(fork.yard().fingerprint()).isEqualTo(bench.yard().fingerprint());
            for (final Controller controller : bench.rig().controllers()) {
                assertThat(fork.scan(controller.name())
                                .run()
                                .isSameAs(bench.scan(controller.name()).run()))
                        .isTrue();
            }
            atNs = bench.nowNs();
        }
    }

    @Test
    void forks_have_futures_of_their_own() {
        final EveningPlan plan = Examples.evening("sea-cave", 11, Duration.ofMinutes(45));
        final VirtualBench bench =
                new EveningRun(plan).bench().runTo(Duration.ofMinutes(20).toNanos());
        final String before = bench.digest();
        final VirtualBench stopped = bench.fork().pressStop(true).advance(Duration.ofSeconds(1));
        assertThat(stopped.yard().isSupplied(0)).isFalse();
        assertThat(stopped.whyNot("north-clam-lid").get(0).observed()).contains("stopped");
        assertThat(bench.digest()).isEqualTo(before);
        assertThat(bench.yard().isSupplied(0)).isTrue();
        assertThat(bench.advance(Duration.ofSeconds(1)).whyNot("north-clam-lid").stream()
                        .filter(why -> why.rule().equals("mode")))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void half_an_hour_of_the_sea_cave_is_the_same_with_every_scan_run(final long seed) {
        final EveningPlan plan = Examples.evening("sea-cave", seed, Duration.ofMinutes(30));
        final EveningPlan slow = new EveningPlan(
                plan.rig(),
                plan.show(),
                plan.codes(),
                seed,
                plan.startEpochMs(),
                plan.lasts(),
                plan.crowd(),
                plan.recorded(),
                false);
        assertThat(digest(plan)).isEqualTo(digest(slow));
    }

    @ParameterizedTest
    @CsvSource({"sea-cave,1", "sea-cave,2", "sea-cave,3", "driftwood,4", "driftwood,5", "driftwood,6"})
    void hands_faults_freezes_and_jumps_of_the_clock_are_the_same_with_every_scan_run(
            final String rig, final long seed) {
        assertThat(meddled(rig, seed, true)).isEqualTo(meddled(rig, seed, false));
    }

    private static String digest(final EveningPlan plan) {
        return new EveningRun(plan).run(share -> {}, () -> 0L).evening().digest();
    }

    /** Random meddling; the digest, the yard to the last bit, and the supplies and pins in the end. */
    private static List<Object> meddled(final String name, final long seed, final boolean isSkipping) {
        final EveningPlan plan = Examples.evening(name, seed, Duration.ofMinutes(5));
        final VirtualBench bench = new VirtualBench(Setup.of(plan.rig(), plan.show())
                .withSeed(seed)
                .withCrowd(plan.crowd())
                .startingAt(plan.startEpochMs())
                .skippingQuiet(isSkipping));
        new slackwater.simulator.evening.Keeper(plan.rig(), plan.show()).open(bench);
        final Rig rig = plan.rig();
        for (final Input key : rig.inputs()) {
            if (key.use() == Input.Use.ARM) {
                bench.at(Duration.ofSeconds(70), yard -> yard.set(key.name(), true));
            }
        }
        final Random random = new Random(seed);
        for (int hand = 0; hand < HANDS; hand++) {
            bench.at(Duration.ofMillis(60_000 + random.nextInt(240_000)), deed(rig, random));
        }
        bench.runTo(Duration.ofMinutes(6).toNanos());
        final List<Object> found =
                new ArrayList<>(List.of(bench.digest(), bench.yard().fingerprint()));
        for (int controller = 0; controller < rig.controllers().size(); controller++) {
            found.add(bench.yard().isSupplied(controller));
        }
        rig.outputs().forEach(output -> found.add(bench.isEnergised(output.name())));
        return found;
    }

    private static VirtualBench.Deed deed(final Rig rig, final Random random) {
        final Input input = rig.inputs().get(random.nextInt(rig.inputs().size()));
        final String controller =
                rig.controllers().get(random.nextInt(rig.controllers().size())).name();
        final boolean isOn = random.nextBoolean();
        final long ms = random.nextInt(40) - 20L;
        return switch (random.nextInt(9)) {
            case 0, 1, 2 -> bench -> bench.set(input.name(), isOn);
            case 3 -> bench -> bench.leave(input.name());
            case 4 -> bench -> bench.pulse(input.name());
            case 5 -> bench -> bench.pressStop(isOn);
            case 6 ->
                bench -> bench.inject(
                        input.name(),
                        isOn
                                ? java.util.Optional.of(new InputOverlay.Chatter(70_000_000L))
                                : java.util.Optional.empty());
            case 7 -> bench -> bench.freeze(controller, isOn);
            default -> bench -> bench.jumpWall(Duration.ofSeconds(ms), isOn);
        };
    }
}
