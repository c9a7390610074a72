package slackwater.controller.scan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slackwater.controller.cue.CueCode;
import slackwater.controller.journal.Journal;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.mode.Wall;
import slackwater.controller.pins.TracedPins;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.watchdog.SampleAge;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.event.Event;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;

/** One controller with a lid, a lamp and a relay on traced pins; every port breaks when a test wants it to. */
final class ScanBench {
    static final long MS = 1_000_000L;
    static final long PERIOD_MS = 10;
    static final long DROP_OUT_MS = 400;

    static final int LOOP = 0;
    static final int RESET = 1;
    static final int KEY = 2;
    static final int PATH = 3;
    static final int LID = 0;
    static final int LAMP = 1;

    static final String RIG =
            """
            [controller.porch]
            board = "pi-4"
            hold-up = { pin = 12, drop-out = "400 ms", seen-pin = 4 }

            [arming]
            warning = "0 s"

            [input.loop]
            kind = "stop-loop"
            active = "high"
            active-after = "20 ms"

            [input.reset]
            kind = "button"
            use = "reset"
            active = "high"

            [input.key]
            kind = "key"
            use = "arm"
            active = "high"

            [input.path]
            kind = "motion"
            active = "high"
            active-after = "0 s"
            warm-up = "0 s"

            [output.lid]
            kind = "valve"
            active = "high"
            on-power-loss = "spring-returns"
            longest-on = "20 s"
            unguarded = "bench block, nothing fitted"

            [output.lamp]
            kind = "lamp"
            active = "high"
            unguarded = "12 V lamp, touch-safe"
            """;

    static final String SHOW =
            """
            [cue.greet]
            starts = "path"
            steps = [
              { energise = "lid", for = "10 s" },
              { at = "0 s", energise = "lamp", for = "15 s" },
            ]
            """;

    final TracedPins pins = new TracedPins(4, 2);
    final List<Event> journal = new ArrayList<>();
    final int[] boardFed = new int[1];
    final Plan plan;
    final Scan scan;
    /** What the next scan's samples are old, and what else the port does when asked. */
    SampleAge age = SampleAge.NONE;
    /** Where records go; the list above unless a test says otherwise. */
    Journal records = journal::add;
    /** Where latches are kept. */
    LatchStore store = LatchStore.inMemory(Kept.NOTHING);

    long nowMs;
    long wakeNs;

    ScanBench(final String rigText, final String showText, final List<CueCode> codes) {
        final Reading reading = read(rigText, showText);
        final Rig rig = reading.rig().orElseThrow(() -> new IllegalStateException(reading.findings() + ""));
        final Show show = reading.show().orElseThrow();
        plan = Plan.compile(rig, show, "porch", Options.plain(7).with(codes));
        scan = new Scan(plan, ports());
        pins.takeWrites();
    }

    /** At rest, nothing armed, the stop loop closed. */
    static ScanBench resting() {
        final ScanBench bench = new ScanBench(RIG, SHOW, List.of());
        bench.pins.lines().set(LOOP, true);
        bench.scanFor(100);
        return bench;
    }

    static ScanBench armed() {
        final ScanBench bench = resting();
        bench.arm();
        return bench;
    }

    /** Armed, and a cue holds lid and lamp. */
    static ScanBench inMidStroke() {
        final ScanBench bench = armed();
        bench.visit();
        bench.scanFor(200);
        if (!bench.isOn(LID) || !bench.isOn(LAMP)) {
            throw new IllegalStateException("the bench did not come into mid-stroke: " + bench.journal);
        }
        bench.pins.takeWrites();
        bench.journal.clear();
        return bench;
    }

    private Ports ports() {
        final LatchStore asked = new LatchStore() {
            @Override
            public Optional<Kept> read() {
                return store.read();
            }

            @Override
            public void keep(final Kept kept) {
                store.keep(kept);
            }
        };
        return new Ports(pins, asked, event -> records.offer(event), () -> boardFed[0]++, () -> age.ageNs());
    }

    /** One scan, one period later. */
    ScanBench step() {
        return scanAt(nowMs + PERIOD_MS);
    }

    ScanBench scanAt(final long ms) {
        nowMs = ms;
        pins.lines().setHoldUpSeenClosed(isRelayHeld());
        wakeNs = scan.once(ms * MS, Wall.UNKNOWN);
        return this;
    }

    ScanBench scanFor(final long ms) {
        final long end = nowMs + ms;
        while (nowMs < end) {
            step();
        }
        return this;
    }

    /** The relay on this bench follows the pulses at once and drops when they stay away. */
    private long edgesSeen;

    private long edgeAtMs = -DROP_OUT_MS;

    private boolean isRelayHeld() {
        if (pins.lines().holdUpEdges() != edgesSeen) {
            edgesSeen = pins.lines().holdUpEdges();
            edgeAtMs = nowMs - PERIOD_MS;
        }
        return nowMs - edgeAtMs < DROP_OUT_MS;
    }

    /** Tries the stop, resets it and turns the key. */
    void arm() {
        pins.lines().set(LOOP, false);
        scanFor(50);
        pins.lines().set(LOOP, true);
        scanFor(50);
        reset();
        turnKey();
    }

    void reset() {
        pins.lines().set(RESET, true);
        scanFor(100);
        pins.lines().set(RESET, false);
        scanFor(100);
    }

    void turnKey() {
        pins.lines().set(KEY, false);
        scanFor(100);
        pins.lines().set(KEY, true);
        scanFor(100);
    }

    /** Somebody passes the path sensor. */
    void visit() {
        pins.lines().set(PATH, true);
        step();
        pins.lines().set(PATH, false);
    }

    boolean isOn(final int output) {
        return pins.lines().isOutputHigh(output);
    }

    boolean isFaulted() {
        return plan.latches().isControllerFaulted(scan.run());
    }

    long edges() {
        return pins.lines().holdUpEdges();
    }

    /** The journal in words. */
    List<String> told() {
        return journal.stream().map(Event::text).toList();
    }

    private static Reading read(final String rigText, final String showText) {
        try {
            final Path folder = Files.createTempDirectory("rig");
            try {
                Files.createDirectories(folder.resolve("shows"));
                Files.writeString(folder.resolve("rig.toml"), rigText);
                Files.writeString(folder.resolve("shows").resolve("first.toml"), showText);
                return RigFolder.read(folder, Optional.empty(), ScanBench.class.getClassLoader());
            } finally {
                delete(folder);
            }
        } catch (final IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static void delete(final Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (final Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
