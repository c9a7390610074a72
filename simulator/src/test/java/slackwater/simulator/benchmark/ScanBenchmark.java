package slackwater.simulator.benchmark;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One scan of the sea cave's north controller, and the same work written by hand. Every figure is for one scan. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class ScanBenchmark {
    private static final Path RIG = Path.of(System.getProperty("slackwater.home", ".."), "rigs", "sea-cave");

    private final NorthBank quiet = new NorthBank(RIG);
    private final NorthBank busy = new NorthBank(RIG);
    private final NorthBank quietByHand = new NorthBank(RIG);
    private final NorthBank busyByHand = new NorthBank(RIG);
    private final HandWrittenLoop quietLoop = armed(quietByHand);
    private final HandWrittenLoop busyLoop = armed(busyByHand);

    private static HandWrittenLoop armed(final NorthBank bank) {
        final HandWrittenLoop loop = new HandWrittenLoop(bank.pins());
        loop.arm();
        return loop;
    }

    /** Armed, and nobody there. */
    @Benchmark
    public long quiet() {
        return quiet.scanOnce();
    }

    /** A visitor and a child every 70 s, so that every cue plays. */
    @Benchmark
    @OperationsPerInvocation(NorthBank.SCANS_OF_A_PASSAGE)
    public long busy() {
        long wakeNs = 0;
        for (int at = 0; at < NorthBank.SCANS_OF_A_PASSAGE; at++) {
            busy.passBy(at);
            wakeNs ^= busy.scanOnce();
        }
        return wakeNs;
    }

    @Benchmark
    public HandWrittenLoop quietByHand() {
        quietLoop.scan(quietByHand.tick());
        return quietLoop;
    }

    @Benchmark
    @OperationsPerInvocation(NorthBank.SCANS_OF_A_PASSAGE)
    public HandWrittenLoop busyByHand() {
        for (int at = 0; at < NorthBank.SCANS_OF_A_PASSAGE; at++) {
            busyByHand.passBy(at);
            busyLoop.scan(busyByHand.tick());
        }
        return busyLoop;
    }
}
