package slackwater.controller.live;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import slackwater.controller.disk.DiskLatchStore;
import slackwater.controller.disk.StateFolder;
import slackwater.controller.gpio.GpioPins;
import slackwater.controller.plan.Plan;
import slackwater.controller.scan.Ports;
import slackwater.controller.scan.Scan;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.ScanSupervisor;

/**
 * A controller that runs: the scan's thread, its supervisor, and the small things around them that the scan must not wait for.
 * Every way out rests every output first.
 */
public final class LiveController {
    /** The scan may be away for so long; shorter than the shortest drop-out of a hold-up relay that the checks let pass. */
    private static final long PATIENCE_NS = TimeUnit.MILLISECONDS.toNanos(250);

    private static final long WRITE_BOUND_MS = 100;
    private static final long LOOK_MS = 50;
    /** Before the first proved scan nothing is energised, and a cold Java on a slow card takes its time. */
    private static final long FIRST_SCAN_NS = TimeUnit.SECONDS.toNanos(20);

    private static final long STOP_MS = 1_000;
    /** A latch is waited for so long before the scan goes on and asks again. */
    private static final long DISK_PATIENCE_NS = TimeUnit.MILLISECONDS.toNanos(20);

    private final Setup setup;
    private final Scan scan;
    private final ScanLoop loop;
    private final DiskLatchStore store;
    private final JournalFile journal;
    private final Housekeeping housekeeping;
    private final Thread scanThread;
    private final Thread supervisorThread;
    private final AtomicReference<End> end = new AtomicReference<>(End.NOT_YET);
    private final CountDownLatch wantsEnd = new CountDownLatch(1);
    private volatile boolean isWatched = true;
    private boolean hasStopped;

    /** Why it ended. */
    public enum End {
        NOT_YET,
        /** Somebody ended it, or its time was over. */
        STOPPED,
        /** The rig's files are not those that were checked at the start. */
        RIG_CHANGED,
        /** The scan's thread is dead. */
        BROKEN
    }

    /** Ends the process without running anything more of it. */
    public interface Halt {
        void now();
    }

    /** The files and the name of what runs. */
    public record Origin(Path rigFolder, String rig, String show, long seed) {}

    /** The system around it. */
    public record Surrounds(Path root, Map<String, String> environment, Say say, Halt halt) {}

    /**
     * What a controller is made of.
     *
     * @param watchdog the board's, opened, where the rig asks for one
     */
    public record Setup(
            Plan plan,
            Origin origin,
            GpioPins pins,
            StateFolder state,
            Optional<DeviceWatchdog> watchdog,
            Surrounds surrounds) {}

    public LiveController(final Setup setup) {
        this.setup = setup;
        final Say say = setup.surrounds().say();
        final RigWatch rigWatch = new RigWatch(setup.origin().rigFolder());
        final WallClock wall =
                new WallClock(System::currentTimeMillis, setup.surrounds().root());
        store = new DiskLatchStore(setup.state(), DISK_PATIENCE_NS);
        journal = new JournalFile(
                setup.state().folder(),
                JournalFile.Limits.USUAL,
                new EventJson.Heading(
                        setup.origin().rig(),
                        setup.origin().show(),
                        setup.plan().places().controller(),
                        setup.state().bootId(),
                        setup.origin().seed(),
                        rigWatch.firstSum(),
                        System.currentTimeMillis()),
                say);
        final ScanLoop.Age age = new ScanLoop.Age(System::nanoTime);
        final BoardWatchdog board =
                setup.watchdog().isPresent() ? setup.watchdog().get() : BoardWatchdog.NONE;
        scan = new Scan(setup.plan(), new Ports(setup.pins(), store, journal, board, age));
        loop = new ScanLoop(scan, age, wall);
        final ServiceNotifier notifier = new ServiceNotifier(
                setup.surrounds().environment(),
                ProcessHandle.current().pid(),
                List.of("systemd-notify"),
                scan.heartbeat()::beats);
        housekeeping = new Housekeeping(
                new Housekeeping.Parts(notifier, wall, rigWatch, setup.watchdog(), say), this::rigChanged);
        scanThread = new Thread(this::runScan, "scan");
        supervisorThread = new Thread(this::supervise, "supervisor");
        supervisorThread.setDaemon(true);
    }

    /** Starts it; from here on {@link #stop} is owed. */
    public void start() {
        scanThread.start();
        supervisorThread.start();
        housekeeping.start(setup.plan().places().controller() + " runs");
    }

    private void runScan() {
        loop.run();
        if (!loop.broken().isEmpty()) {
            isWatched = false; // everything rests; there is nothing more to watch
            finish(End.BROKEN);
        }
    }

    private void rigChanged() {
        finish(End.RIG_CHANGED);
    }

    private void finish(final End why) {
        end.compareAndSet(End.NOT_YET, why);
        wantsEnd.countDown();
    }

    private void supervise() {
        final Say say = setup.surrounds().say();
        final ScanSupervisor supervisor = new ScanSupervisor(
                scan.heartbeat(),
                scan.gate(),
                why -> {
                    say.line(why + ": every output was put to rest and the program is ended");
                    setup.surrounds().halt().now();
                },
                new ScanSupervisor.Bounds(PATIENCE_NS, WRITE_BOUND_MS));
        final long startNs = System.nanoTime();
        // the longest that two looks may lie apart, or a frozen process would count as a hung scan
        final AwakeTime awake = new AwakeTime(startNs, TimeUnit.MILLISECONDS.toNanos(2 * LOOK_MS));
        while (isWatched) {
            final long nowNs = awake.at(System.nanoTime());
            final boolean hasBegun = scan.heartbeat().beats() > 0 || nowNs >= FIRST_SCAN_NS;
            if (hasBegun && supervisor.look(nowNs)) {
                return;
            }
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(LOOK_MS);
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits until it is to end; at most so long, where a time is given. Then {@link #stop} it. */
    public End await(final Optional<Duration> atMost) throws InterruptedException {
        if (atMost.isPresent()) {
            if (!wantsEnd.await(atMost.get().toNanos(), TimeUnit.NANOSECONDS)) {
                finish(End.STOPPED);
            }
        } else {
            wantsEnd.await();
        }
        return Objects.requireNonNull(end.get());
    }

    /** Brings everything to rest and ends every thread, once; whoever comes second waits for the first. */
    public synchronized void stop() {
        if (hasStopped) {
            return;
        }
        hasStopped = true;
        loop.end();
        joinScan();
        isWatched = false;
        finish(End.STOPPED);
        final boolean isClean = loop.hasEnded() && loop.broken().isEmpty();
        if (!loop.hasEnded()) {
            restBesideTheScan();
        }
        setup.watchdog().ifPresent(board -> leave(board, isClean));
        housekeeping.stop();
        store.close();
        journal.close();
        setup.pins().release();
        try {
            setup.state().close();
        } catch (final IOException broken) {
            setup.surrounds().say().line("the state folder cannot be closed: " + broken);
        }
    }

    private void leave(final DeviceWatchdog board, final boolean isClean) {
        if (!isClean) {
            board.close();
        } else if (!board.disarm()) {
            setup.surrounds().say().line("the board's watchdog cannot be disarmed (nowayout): the board will reset");
        }
    }

    private void joinScan() {
        try {
            scanThread.join(STOP_MS);
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** The supervisor sees to a scan that hangs; this is for one that hangs just while somebody ends the program. */
    private void restBesideTheScan() {
        scan.gate().close();
        final Thread writer = new Thread(() -> scan.gate().restAll(), "rest-writer");
        writer.setDaemon(true);
        writer.start();
        try {
            writer.join(WRITE_BOUND_MS);
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        setup.surrounds().say().line("the scan does not end; every output was put to rest beside it");
    }

    /** What broke the scan, or an empty text. */
    public String broken() {
        return loop.broken();
    }

    /** How late its scans were; once it has stopped. */
    public Lateness lateness() {
        return loop.lateness();
    }

    /** The way in for commands, for whoever brings them. */
    public Scan scan() {
        return scan;
    }
}
