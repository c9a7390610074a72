package slackwater.simulator.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.controller.command.Request;
import slackwater.controller.ledger.KeptLedger;
import slackwater.controller.ledger.LedgerEntry;
import slackwater.model.event.Event;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;

/** Ledger and shedding on the bench: the same with every scan run, and in a fork. */
final class LedgerOnTheBenchTest {
    private static final String RIG = """
            [controller.quay]
            board = "pi-4"
            [arming]
            warning = "0 s"
            [input.stop-loop]
            kind = "stop-loop"
            active = "low"
            [input.reset]
            kind = "button"
            use = "reset"
            [input.arm-key]
            kind = "key"
            use = "arm"
            [input.refill]
            kind = "button"
            use = "refill"
            [input.plenty]
            kind = "key"
            [input.ask-fog]
            kind = "button"
            [input.ask-jet]
            kind = "button"
            [output.fog]
            kind = "pump"
            flow = "12 g/min"
            holds = "4 ml"
            longest-on = "4 s"
            [output.jet]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "1 s"
            air-per-stroke = "1.5 l"
            [output.horn]
            kind = "sounder"
            longest-on = "2 s"
            [shed.thin]
            needs = ["plenty"]
            outputs = ["horn", "jet"]
            next-after = "7.345 s"
            """;
    private static final String SHOW = """
            [cue.fog]
            starts = "ask-fog"
            steps = [ { energise = "fog", for = "3.33 s" } ]
            [cue.jet]
            starts = "ask-jet"
            steps = [ { energise = ["jet", "horn"], for = "0.55 s" } ]
            """;
    private static final int HANDS = 150;

    @TempDir
    private Path folder;

    private Reading reading;

    @BeforeEach
    void write() throws IOException {
        Files.createDirectory(folder.resolve("shows"));
        Files.writeString(folder.resolve("rig.toml"), RIG);
        Files.writeString(folder.resolve("shows").resolve("only.toml"), SHOW);
        reading = RigFolder.read(folder, Optional.empty(), getClass().getClassLoader());
        assertThat(reading.findings()).isEmpty();
    }

    private Setup setup() {
        return Setup.of(reading.rig().orElseThrow(), reading.show().orElseThrow());
    }

    private VirtualBench armed(final Setup setup) {
        final VirtualBench bench = new VirtualBench(setup).set("plenty", true);
        bench.advance(Duration.ofSeconds(1)).pressStop(true).advance(Duration.ofSeconds(1));
        bench.pressStop(false).advance(Duration.ofSeconds(1));
        press(bench, "reset");
        return bench.set("arm-key", true).advance(Duration.ofSeconds(1));
    }

    private static void press(final VirtualBench bench, final String button) {
        bench.set(button, true)
                .advance(Duration.ofMillis(100))
                .set(button, false)
                .advance(Duration.ofMillis(100));
    }

    /** Ten minutes of hands at random; what the ledger says, what was told, and the run's fingerprint. */
    private List<Object> meddled(final long seed, final boolean isSkipping) {
        final VirtualBench bench = armed(setup().skippingQuiet(isSkipping));
        final List<Object> told = new ArrayList<>();
        bench.listen(new BenchListener() {
            @Override
            public void event(final int controller, final Event event) {
                told.add(event);
            }
        });
        final Random random = new Random(seed);
        for (int hand = 0; hand < HANDS; hand++) {
            final Duration when = Duration.ofMillis(5_000 + random.nextInt(600_000));
            final int which = random.nextInt(16);
            final String button = which < 11
                    ? "ask-fog"
                    : List.of("ask-jet", "ask-jet", "plenty", "plenty", "refill")
                            .get(which - 11);
            final boolean isWeighing = random.nextInt(12) == 0;
            final double usedKg = random.nextDouble() * 0.004;
            bench.at(when, yard -> yard.set(button, true));
            bench.at(when.plusMillis(200 + random.nextInt(9_000)), yard -> yard.set(button, false));
            if (isWeighing) {
                bench.at(when.plusMillis(1_234), yard -> weigh(yard, usedKg));
            }
        }
        bench.runTo(Duration.ofSeconds(620).toNanos());
        told.addAll(bench.scan("quay").ledger(bench.nowNs()));
        told.add(bench.digest());
        // whoever weighs at random makes the ledger count wrong, and a bottle may run dry; the referee sees the bottle
        told.add(bench.violations().stream()
                .filter(found -> !found.rule().equals("dry-pump"))
                .toList());
        return told;
    }

    private static void weigh(final VirtualBench bench, final double usedKg) {
        final Request.Seen seen = new Request.Seen(1, bench.scan("quay").latchGeneration());
        bench.commands("quay").ask(Request.weighing("fog", usedKg, "Maren", seen));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void the_ledger_its_warnings_and_refusals_are_the_same_with_every_scan_run(final long seed) {
        final List<Object> skipped = meddled(seed, true);
        assertThat(skipped).isEqualTo(meddled(seed, false));
        assertThat(skipped).hasAtLeastOneElementOfType(Event.RunningLow.class);
        assertThat(skipped).hasAtLeastOneElementOfType(Event.Refilled.class);
        assertThat(skipped.stream()
                        .filter(Event.Refused.class::isInstance)
                        .map(told -> ((Event.Refused) told).refusal().rule()))
                .contains("runs-dry", "shed");
        assertThat(skipped).contains(List.of()); // the referee has found nothing
    }

    @Test
    void a_fork_goes_on_with_what_is_left_and_has_a_future_of_its_own() {
        final VirtualBench bench = armed(setup());
        press(bench, "ask-fog");
        final VirtualBench fork = bench.advance(Duration.ofSeconds(1)).fork();
        bench.advance(Duration.ofMinutes(3));
        fork.advance(Duration.ofMinutes(3));
        assertThat(ledger(fork)).isEqualTo(ledger(bench));
        press(fork, "ask-fog");
        press(fork.advance(Duration.ofSeconds(10)), "refill");
        assertThat(ledger(fork).get(0).startsCount()).isEqualTo(2);
        assertThat(ledger(bench).get(0).startsCount()).isEqualTo(1);
    }

    @Test
    void a_bench_remembers_what_its_ledger_kept() {
        final KeptLedger kept = new KeptLedger(
                List.of(new KeptLedger.Line("fog", 40, 90_000_000_000L, 17_000_000_000L, 0, true, true)));
        final VirtualBench bench = armed(setup().remembering(kept));
        assertThat(ledger(bench).get(0).left().orElseThrow()).isCloseTo(4.12 - 3.4, within(1e-9));
        press(bench, "ask-fog");
        assertThat(bench.isEnergised("fog")).isFalse();
        press(bench.advance(Duration.ofSeconds(4)), "refill");
        press(bench, "ask-fog");
        assertThat(bench.isEnergised("fog")).isTrue();
    }

    private static List<LedgerEntry> ledger(final VirtualBench bench) {
        return bench.scan("quay").ledger(bench.nowNs());
    }
}
