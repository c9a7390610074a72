package slackwater.controller.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static slackwater.controller.scan.ScanBench.LAMP;
import static slackwater.controller.scan.ScanBench.LID;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import slackwater.controller.watchdog.ScanSupervisor;

/** A real scan on a thread of its own that hangs before, inside and after a pin write, and is then released (S8). */
@Timeout(20)
final class HungScanTest {
    private static final long PATIENCE_NS = 1_000;

    /** Lets the scan that would start the lid hang once at a place, the supervisor act, and the scan go on. */
    private static ScanBench hang(final Consumer<ScanBench> place, final CountDownLatch isHung, final Runnable release)
            throws InterruptedException {
        final ScanBench bench = ScanBench.armed();
        final List<String> halted = Collections.synchronizedList(new ArrayList<>());
        final ScanSupervisor supervisor = new ScanSupervisor(
                bench.scan.heartbeat(), bench.scan.gate(), halted::add, new ScanSupervisor.Bounds(PATIENCE_NS, 500));
        supervisor.look(0);
        place.accept(bench);
        final Thread scanThread = new Thread(bench::visit, "scan");
        scanThread.start();
        assertThat(isHung.await(5, TimeUnit.SECONDS)).isTrue();
        final long edges = bench.edges();

        assertThat(supervisor.look(PATIENCE_NS)).isTrue();
        assertThat(halted).hasSize(1);
        release.run();
        scanThread.join();

        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isOn(LAMP)).isFalse();
        bench.scanFor(1_000);
        assertThat(bench.isOn(LID)).isFalse();
        assertThat(bench.isOn(LAMP)).isFalse();
        assertThat(bench.edges()).as("a closed gate makes no pulse").isEqualTo(edges);
        return bench;
    }

    private final CountDownLatch isHung = new CountDownLatch(1);
    private final CountDownLatch release = new CountDownLatch(1);

    private void hangOnce() {
        if (Thread.currentThread().getName().equals("scan") && isHung.getCount() > 0) {
            isHung.countDown();
            try {
                release.await();
            } catch (final InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    @Test
    void hung_before_any_write() throws InterruptedException {
        hang(bench -> bench.pins.beforeSample(this::hangOnce), isHung, release::countDown);
    }

    @Test
    void hung_just_before_the_writes() throws InterruptedException {
        hang(
                bench -> bench.age = () -> {
                    hangOnce();
                    return 0;
                },
                isHung,
                release::countDown);
    }

    @Test
    void hung_inside_the_write_that_energises() throws InterruptedException {
        hang(
                bench -> {
                    bench.pins.takeWrites();
                    bench.pins.beforeWrite(this::hangOnce);
                },
                isHung,
                release::countDown);
    }

    @Test
    void hung_after_the_writes() throws InterruptedException {
        hang(bench -> bench.pins.beforeReadBack(this::hangOnce), isHung, release::countDown);
    }
}
