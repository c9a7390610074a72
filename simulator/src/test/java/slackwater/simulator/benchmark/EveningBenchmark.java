package slackwater.simulator.benchmark;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slackwater.controller.app.RigLoader;
import slackwater.model.Rig;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.evening.EveningRun;
import slackwater.simulator.visitor.CrowdMaker;

/** Four hours of the sea cave, two controllers, from a JVM that has run nothing before; each fork is one measurement. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(value = 5, jvmArgs = "-XX:+UseSerialGC")
public class EveningBenchmark {
    private static final Path RIG = Path.of(System.getProperty("slackwater.home", ".."), "rigs", "sea-cave");
    private static final Duration EVENING = Duration.ofHours(4);

    @Param({"true", "false"})
    private boolean skipsQuiet;

    @Benchmark
    public String fourHours() {
        final RigLoader.Loaded loaded = RigLoader.load(RIG, Optional.empty());
        final Rig rig = loaded.rig().orElseThrow(() -> new IllegalStateException(loaded.text()));
        final EveningPlan plan = new EveningPlan(
                rig,
                loaded.show(),
                List.of(),
                1,
                EveningPlan.startOf(rig, loaded.show()),
                EVENING,
                CrowdMaker.draw(rig.surroundings().way(), 1, 0, EVENING.toNanos()),
                Optional.empty(),
                skipsQuiet);
        return new EveningRun(plan).run(share -> {}, System::nanoTime).evening().digest();
    }
}
