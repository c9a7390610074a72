package slackwater.controller.mode;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slackwater.controller.command.Request;
import slackwater.controller.command.Secrets;
import slackwater.controller.journal.Journal;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.ledger.KeptLedger;
import slackwater.controller.ledger.LedgerStore;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.scan.Ports;
import slackwater.controller.scan.Scan;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;
import slackwater.model.Input;
import slackwater.model.Mode;
import slackwater.model.event.Event;
import slackwater.model.event.Refusal;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;

/** One controller on virtual pins and virtual time, from the text of a rig and a show; the scan is 10 ms. */
public final class TestYard {
    public static final long MS = 1_000_000L;
    public static final long BOOT_ID = 1;
    public static final String OVERRIDE = "key in the lock";

    private static final long PERIOD_MS = 10;

    private final Reading reading;
    private final LatchStore store;
    private final LedgerStore ledgers;
    private final List<Event> events = new ArrayList<>();
    private Plan plan;
    private VirtualPins pins;
    private Scan scan;
    private long nowMs;
    private long wakesAtNs;
    private long epochMs;
    private boolean isTimeTrusted;

    private TestYard(final Reading reading, final LatchStore store, final LedgerStore ledgers) {
        this.reading = reading;
        this.store = store;
        this.ledgers = ledgers;
        plan = compile();
        pins = newPins();
        scan = newScan();
    }

    /** A yard without a show that was never used before. */
    public static TestYard of(final String rig) {
        return of(rig, "");
    }

    public static TestYard of(final String rig, final String show) {
        return of(rig, show, LatchStore.inMemory(Kept.NOTHING));
    }

    public static TestYard of(final String rig, final String show, final LatchStore store) {
        return new TestYard(read(rig, show), store, LedgerStore.inMemory(KeptLedger.NOTHING));
    }

    /** A yard whose ledger is kept there. */
    public static TestYard of(final String rig, final String show, final LedgerStore ledgers) {
        return new TestYard(read(rig, show), LatchStore.inMemory(Kept.NOTHING), ledgers);
    }

    private static Reading read(final String rig, final String show) {
        try {
            final Path folder = Files.createTempDirectory("test-yard");
            final Path rigFile = Files.writeString(folder.resolve("rig.toml"), rig);
            final Path shows = Files.createDirectory(folder.resolve("shows"));
            final Path showFile = Files.writeString(shows.resolve("only.toml"), show);
            final Reading reading = RigFolder.read(folder, Optional.empty(), TestYard.class.getClassLoader());
            for (final Path made : List.of(showFile, shows, rigFile, folder)) {
                Files.delete(made);
            }
            if (reading.rig().isEmpty()) {
                throw new IllegalArgumentException(reading.findings().toString());
            }
            return reading;
        } catch (final IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private Plan compile() {
        final Options plain = Options.plain(7);
        final Options options = new Options(plain.seed(), BOOT_ID, new OwnNames(), plain.codes());
        return Plan.compile(reading.rig().orElseThrow(), reading.show().orElseThrow(), controllerName(), options);
    }

    private String controllerName() {
        return reading.rig().orElseThrow().controllers().get(0).name();
    }

    private VirtualPins newPins() {
        final List<Input> inputs = plan.places().inputs();
        final boolean[] levels = new boolean[inputs.size()];
        return new VirtualPins(levels, new boolean[plan.places().outputs().size()]);
    }

    private Scan newScan() {
        final Journal journal = events::add;
        return new Scan(plan, new Ports(pins, store, ledgers, journal, BoardWatchdog.NONE, SampleAge.NONE));
    }

    /** Everybody's secret is their own name backwards. */
    private static final class OwnNames implements Secrets {
        @Override
        public boolean isOwn(final String person, final String secret) {
            return secret.equals(secretOf(person));
        }

        @Override
        public boolean isOverride(final String secret) {
            return secret.equals(OVERRIDE);
        }
    }

    public static String secretOf(final String person) {
        return new StringBuilder(person).reverse().toString();
    }

    /** Another controller of the same rig, never used before. */
    public TestYard another() {
        return new TestYard(reading, LatchStore.inMemory(Kept.NOTHING), LedgerStore.inMemory(KeptLedger.NOTHING));
    }

    /** The controller starts again: its store stays, its memory goes, the lines and the wall clock are as they were. */
    public TestYard restart() {
        plan = compile();
        events.clear();
        epochMs += nowMs;
        nowMs = 0;
        scan = newScan();
        return this;
    }

    /** Sets the wall clock; from now on it goes with the run's own time. */
    public TestYard clock(final long toEpochMs) {
        epochMs = toEpochMs - nowMs;
        isTimeTrusted = true;
        return this;
    }

    public TestYard trust(final boolean isTrusted) {
        isTimeTrusted = isTrusted;
        return this;
    }

    public TestYard set(final String input, final boolean isActive) {
        pins.set(plan.places().input(input), isActive);
        return this;
    }

    public TestYard holdUpIsClosed(final boolean isClosed) {
        pins.setHoldUpSeenClosed(isClosed);
        return this;
    }

    public TestYard pulse(final String input) {
        pins.pulse(plan.places().input(input));
        return this;
    }

    /** One scan. */
    public TestYard scan() {
        scan.once(nowMs * MS, new Wall(epochMs + nowMs, isTimeTrusted));
        wakesAtNs = scan.run().wakeNs(); // what decides; keeping the ledger once a minute decides nothing
        nowMs += PERIOD_MS;
        return this;
    }

    /** Scans for so long. */
    public TestYard scan(final long lengthMs) {
        for (long at = 0; at < lengthMs; at += PERIOD_MS) {
            scan();
        }
        return this;
    }

    /** Pretends that so much time went by without a scan, then scans once. */
    public TestYard skip(final long lengthMs) {
        nowMs += lengthMs - PERIOD_MS;
        return scan();
    }

    /** Sends a request that quotes what is true now, and scans. */
    public TestYard ask(final Request.Wants wants, final String target) {
        return send(wants, target, "Maren", "").scan();
    }

    public TestYard send(final Request.Wants wants, final String target, final String who, final String secret) {
        return send(new Request(wants, target, who, secret, seen()));
    }

    public TestYard send(final Request request) {
        if (!scan.commandDesk().ask(request)) {
            throw new IllegalStateException("the queue is full");
        }
        return this;
    }

    public Request.Seen seen() {
        return new Request.Seen(BOOT_ID, scan.latchGeneration());
    }

    public TestYard press(final String button, final long lengthMs) {
        return set(button, true).scan(lengthMs).set(button, false).scan(lengthMs);
    }

    public Scan scanner() {
        return scan;
    }

    public Plan plan() {
        return plan;
    }

    public LatchStore store() {
        return store;
    }

    public long nowMs() {
        return nowMs;
    }

    /** By the wall clock, when the last scan wants the next one if nothing happens before. */
    public long wakesAtEpochMs() {
        return epochMs + wakesAtNs / MS;
    }

    public Mode mode(final String zone) {
        return scan.image().zoneMode[plan.places().zone(zone)];
    }

    public Mode outputMode(final String output) {
        return scan.image().mode[plan.places().output(output)];
    }

    public boolean isEnergised(final String output) {
        return pins.isOutputHigh(plan.places().output(output));
    }

    public boolean mayGreet(final String zone) {
        return scan.image().mayGreet[plan.places().zone(zone)];
    }

    /** Which rules refuse an output now. */
    public String refusing(final String output) {
        return scan.whyNot(output).stream().map(Refusal::rule).collect(Collectors.joining(", "));
    }

    /** Texts of what happened since this was last asked. */
    public List<String> news() {
        final List<String> texts = events.stream().map(Event::text).toList();
        events.clear();
        return texts;
    }
}
