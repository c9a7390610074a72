package slackwater.simulator.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slackwater.model.Rig;
import slackwater.model.file.RigFolder;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.yard.Yard;

/** An hour of the plants of one, four and sixteen banks, each stroke, jet and burst once in half a minute. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class PlantBenchmark {
    private static final long S = 1_000_000_000L;
    private static final int SECONDS = 3_600;
    private static final int ROUND_S = 30;
    private static final int OUTPUTS = 6;
    private static final String SHARED = """
            [air]
            tank = "200 l"
            cut-in = "6 bar"
            cut-out = "8 bar"
            delivers = "400 l/min"
            working = "2.5 bar"
            leak = "1 l/min"
            [circuit.shed]
            voltage = "230 V"
            breaker = "200 A"
            [controller.shed]
            board = "pi-4"
            """;
    private static final String BANK = """
            [zone.z#]
            [output.z#-air]
            kind = "air-supply"
            zone = "z#"
            unguarded = "a benchmark"
            [output.z#-lid]
            kind = "valve"
            zone = "z#"
            on-power-loss = "spring-returns"
            longest-on = "3 s"
            unguarded = "a benchmark"
            bore = "25 mm"
            travel = "0.25 m"
            moving-mass = "2.5 kg"
            lifts = true
            strokes-in = "0.5 s"
            returns-in = "0.9 s"
            [output.z#-jet]
            kind = "valve"
            zone = "z#"
            on-power-loss = "spring-returns"
            longest-on = "3 s"
            unguarded = "a benchmark"
            nozzle = "2 mm"
            [output.z#-heat]
            kind = "heater"
            zone = "z#"
            cut-out = "its own"
            unguarded = "a benchmark"
            power = "700 W"
            fed-by = "shed"
            [output.z#-fog]
            kind = "pump"
            zone = "z#"
            longest-on = "5 s"
            unguarded = "a benchmark"
            flow = "12 g/min"
            heated-by = "z#-heat"
            [output.z#-mist]
            kind = "mister"
            zone = "z#"
            longest-on = "5 s"
            unguarded = "a benchmark"
            uses = "350 ml/h"
            holds = "20 l"
            """;

    @Param({"1", "4", "16"})
    private int banks;

    private Optional<Rig> rig = Optional.empty();

    @Setup
    public void build() throws IOException {
        final StringBuilder text = new StringBuilder(SHARED);
        for (int bank = 0; bank < banks; bank++) {
            text.append(BANK.replace("#", Integer.toString(bank)));
        }
        final Path folder = Files.createTempDirectory("banks");
        Files.createDirectories(folder.resolve("shows"));
        Files.writeString(folder.resolve("rig.toml"), text.toString());
        Files.writeString(folder.resolve("shows").resolve("none.toml"), "");
        final var reading = RigFolder.read(folder, Optional.empty(), PlantBenchmark.class.getClassLoader());
        if (reading.rig().isEmpty()) {
            throw new IllegalStateException(reading.findings().toString());
        }
        rig = reading.rig();
    }

    @Benchmark
    public long anHour() {
        final Yard yard = new Yard(rig.orElseThrow(), Crowd.NOBODY, 1);
        for (int bank = 0; bank < banks; bank++) {
            yard.setOutputHigh(OUTPUTS * bank, true);
            yard.setOutputHigh(OUTPUTS * bank + 3, true);
        }
        for (int second = 0; second < SECONDS; second++) {
            final int inRound = second % ROUND_S;
            for (int bank = 0; bank < banks; bank++) {
                yard.setOutputHigh(OUTPUTS * bank + 1, inRound < 2);
                yard.setOutputHigh(OUTPUTS * bank + 2, inRound == 5);
                yard.setOutputHigh(OUTPUTS * bank + 4, inRound >= 8 && inRound < 10);
                yard.setOutputHigh(OUTPUTS * bank + 5, inRound >= 12 && inRound < 17);
            }
            yard.step(second * S);
        }
        return yard.fingerprint();
    }
}
