package slackwater.controller.plan;

import java.util.ArrayList;
import java.util.List;
import slackwater.controller.cue.CueCode;
import slackwater.controller.journal.Journal;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.mode.Wall;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.scan.Ports;
import slackwater.controller.scan.Scan;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;
import slackwater.model.event.Event;

/** A whole scan on bare lines that are active high, every 10 ms from 0 on. */
public final class ScanBench {
    private static final long NS_PER_MS = 1_000_000L;
    private static final long SCAN_MS = 10;

    private final Plan plan;
    private final VirtualPins pins;
    private final LatchStore store;
    private final Scan scan;
    private final List<Event> events = new ArrayList<>();
    private long nowMs;

    private ScanBench(final Plan plan, final Kept kept) {
        this.plan = plan;
        pins = new VirtualPins(
                new boolean[plan.places().inputs().size()],
                new boolean[plan.places().outputs().size()]);
        store = LatchStore.inMemory(kept);
        final Journal journal = events::add;
        scan = new Scan(plan, new Ports(pins, store, journal, BoardWatchdog.NONE, SampleAge.NONE));
    }

    public static ScanBench of(final Plan plan) {
        return new ScanBench(plan, Kept.NOTHING);
    }

    /** One controller called {@code yard}, started after something was kept. */
    public static ScanBench after(final Kept kept, final String tables, final String show) {
        final RigText text = RigText.of(RigText.yard(tables), show);
        return new ScanBench(Plan.compile(text.rig(), text.show(), "yard", Options.plain(1)), kept);
    }

    /** One controller called {@code yard}. */
    public static ScanBench of(final String tables, final String show, final CueCode... codes) {
        final RigText text = RigText.of(RigText.yard(tables), show);
        return of(Plan.compile(text.rig(), text.show(), "yard", Options.plain(1).with(List.of(codes))));
    }

    public ScanBench step() {
        scan.once(nowMs * NS_PER_MS, Wall.UNKNOWN);
        nowMs += SCAN_MS;
        return this;
    }

    /** Scans up to and including the one at a moment. */
    public ScanBench until(final long atMs) {
        while (nowMs <= atMs) {
            step();
        }
        return this;
    }

    public ScanBench high(final String... inputs) {
        for (final String input : inputs) {
            pins.set(plan.places().input(input), true);
        }
        return this;
    }

    public ScanBench low(final String... inputs) {
        for (final String input : inputs) {
            pins.set(plan.places().input(input), false);
        }
        return this;
    }

    /** The moment of the next scan. */
    public long nextMs() {
        return nowMs;
    }

    public boolean isHigh(final String output) {
        return pins.isOutputHigh(plan.places().output(output));
    }

    /** Every reason now, in words. */
    public List<String> whyNot(final String output) {
        return scan.whyNot(output).stream()
                .map(refusal -> refusal.text(scan.run().atNs()))
                .toList();
    }

    /** Events of one kind so far, such as {@code 20: text}. */
    public List<String> said(final Class<? extends Event> kind) {
        return events.stream()
                .filter(kind::isInstance)
                .map(event -> event.atNs() / NS_PER_MS + ": " + event.text())
                .toList();
    }

    /** How often an output went to its energised level. */
    public long strokes(final String output) {
        return events.stream()
                .filter(event -> event instanceof Event.Switched switched
                        && switched.isEnergised()
                        && switched.output().equals(output))
                .count();
    }

    public Kept kept() {
        return store.read().orElseThrow();
    }

    public Scan scan() {
        return scan;
    }
}
