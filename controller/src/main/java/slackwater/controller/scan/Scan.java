package slackwater.controller.scan;

import java.util.List;
import java.util.Optional;
import slackwater.controller.command.Commands;
import slackwater.controller.cue.Asking;
import slackwater.controller.cue.CueStage;
import slackwater.controller.cue.StandingStage;
import slackwater.controller.image.Image;
import slackwater.controller.journal.Recorder;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.ledger.LedgerEntry;
import slackwater.controller.mode.Wall;
import slackwater.controller.pins.Gate;
import slackwater.controller.pins.PinWriter;
import slackwater.controller.plan.Plan;
import slackwater.controller.run.RunState;
import slackwater.controller.watchdog.Heartbeat;
import slackwater.controller.watchdog.Step;
import slackwater.controller.watchdog.Watchdogs;
import slackwater.model.Output;
import slackwater.model.event.Event;
import slackwater.model.event.Refusal;

/** One pass over the rig. The order of the steps is the safety argument, so it is written out, not configured. */
public final class Scan {
    private final Plan plan;
    private final Ports ports;
    private final RunState run;
    private final Image image;
    private final Gate gate;
    private final Commands commands;
    private final Watchdogs watchdogs;
    private final Heartbeat heartbeat;
    private final Recorder recorder;
    private final LedgerKeeper ledgerKeeper;
    private final Asking asking;
    /** Made once, so that a scan in which nothing changes allocates nothing. */
    private final PinWriter.Changes changes = this::changed;

    private final StandingStage.Warming heatWishes;
    private long keptSignature;
    private boolean owesKeeping;
    private boolean hasToldOfKeeping;

    /** Begins a run: what outlived the last one is restored, and every output is at rest. */
    public Scan(final Plan plan, final Ports ports) {
        this(plan, ports, plan.newRun(), plan.places().newImage(), new Commands(plan.places(), plan.names()));
        final Optional<Kept> kept = ports.store().read();
        plan.modes().restore(run, image, kept);
        plan.guards().restore(run, kept.map(Kept::spent).orElse(List.of()));
        plan.ledger().restore(run, image, ports.ledgers().read());
        keptSignature = signature();
        gate.restAll();
    }

    private Scan(final Plan plan, final Ports ports, final RunState run, final Image image, final Commands commands) {
        this.plan = plan;
        this.ports = ports;
        this.run = run;
        this.image = image;
        this.commands = commands;
        gate = new Gate(ports.pins(), restLevels(plan.places().outputs()));
        heartbeat = new Heartbeat();
        watchdogs = new Watchdogs(plan.holdUp(), ports.board(), heartbeat);
        recorder = new Recorder(ports.journal());
        ledgerKeeper = new LedgerKeeper(plan.ledger(), ports.ledgers());
        asking = CueStage.asking(image);
        heatWishes = plan.modes()::wantsHeat;
    }

    /** A scan that goes on from here by itself, on other pins and for another journal. Waiting commands stay behind. */
    public Scan fork(final Ports others) {
        final Scan fork = new Scan(plan, others, run.copy(), image.copy(), new Commands(plan.places(), plan.names()));
        fork.keptSignature = keptSignature;
        fork.owesKeeping = owesKeeping;
        fork.ledgerKeeper.goOnFrom(ledgerKeeper);
        fork.hasToldOfKeeping = hasToldOfKeeping;
        return fork;
    }

    /**
     * Runs once. Returns the next moment at which a scan could differ, if no input, no command and no wall time that does not
     * follow its course comes before it.
     */
    public long once(final long nowNs, final Wall wall) {
        run.begin(nowNs);
        image.begin();
        watchdogs.proof().begin();
        try {
            restIfTheRelayMayHaveDropped();
            inputs();
            commands();
            modes(wall);
            cues();
            guards();
            drivers();
            final boolean isBelieved = writePins();
            if (isBelieved) {
                watchdogs.feed(run, gate);
            } else {
                watchdogs.keepAlive(); // a stuck pin must not become a reboot or restart loop (S10)
            }
        } catch (final RuntimeException broken) {
            failToRest(broken);
        }
        keepLatches();
        ledgerKeeper.keep(run, image);
        recorder.record(run, image);
        return Math.min(run.wakeNs(), ledgerKeeper.wakeNs());
    }

    /** Accounts for scans up to {@code lastScanNs} that would have changed nothing and were therefore not run. */
    public void passOver(final long lastScanNs) {
        plan.holdUp().passOver(run, lastScanNs);
    }

    private void restIfTheRelayMayHaveDropped() {
        if (plan.holdUp().mayHaveDropped(run)) {
            restEverything();
            plan.holdUp().withhold(run);
            plan.latches().faultController(run, image, "no scan for longer than the hold-up relay's drop-out");
        }
    }

    private void inputs() {
        plan.inputs().update(run, ports.pins(), image);
        plan.holdUp().look(run, gate);
        watchdogs.proof().mark(Step.INPUTS);
    }

    private void commands() {
        plan.modes().commands(run, image, commands);
        watchdogs.proof().mark(Step.COMMANDS);
    }

    private void modes(final Wall wall) {
        final boolean wasFaulted = plan.latches().isControllerFaulted(run);
        image.mayResetFault = plan.holdUp().mayReset(run, gate, isAllAtRest());
        image.hasPassedDropTest = plan.holdUp().hasPassedDropTest(run);
        plan.modes().update(run, image, wall);
        plan.ledger().update(run, image);
        if (wasFaulted && !plan.latches().isControllerFaulted(run)) {
            plan.holdUp().release(run);
        }
        watchdogs.proof().mark(Step.MODES);
    }

    private void cues() {
        plan.cues().update(run, image, asking);
        plan.standing().update(run, image, heatWishes);
        watchdogs.proof().mark(Step.CUES);
    }

    private void guards() {
        plan.drivers().renew(run, image);
        plan.guards().judge(run, image);
        watchdogs.proof().mark(Step.GUARDS);
    }

    private void drivers() {
        plan.drivers().update(run, image);
        watchdogs.proof().mark(Step.DRIVERS);
    }

    /** Returns whether what can be read back agrees. */
    private boolean writePins() {
        if (ports.age().ageNs() > plan.periodNs() / 2) {
            dropStarts(); // too old to act on, and rest is always right (S9); unproved, so nothing is fed
            plan.pins().commit(run, image, gate, changes);
        } else {
            plan.pins().commit(run, image, gate, changes);
            watchdogs.proof().mark(Step.PINS);
        }
        return isBelieved();
    }

    private void dropStarts() {
        for (int output = 0; output < image.energised.length; output++) {
            if (image.next[output] && !image.energised[output]) {
                image.next[output] = false;
                plan.drivers().rest(run, output);
                image.note(new Event.Limited(run.atNs(), name(output), "late scan"));
            }
        }
    }

    private boolean isBelieved() {
        for (int output = 0; output < image.energised.length; output++) {
            final PinWriter.Belief belief = plan.pins().belief(run, image, gate, output);
            if (belief == PinWriter.Belief.STUCK_ON) {
                restEverything();
                plan.holdUp().withhold(run);
                plan.latches().faultController(run, image, name(output) + " is energised although it was put to rest");
                return false;
            }
            if (belief == PinWriter.Belief.STUCK_OFF && !plan.latches().isOutputFaulted(run, output)) {
                plan.latches().faultOutput(run, image, output, name(output) + " stays dead although it was energised");
            }
        }
        return true;
    }

    private void changed(final int output, final boolean isEnergised) {
        plan.guards().observe(run, output, isEnergised);
        plan.ledger().observe(run, output, isEnergised);
        image.note(new Event.Switched(run.atNs(), name(output), isEnergised));
    }

    /** Any exception: everything rests and a fault latches, so that the next scan does not energise again (S9). */
    private void failToRest(final RuntimeException broken) {
        restEverything();
        plan.holdUp().withhold(run);
        plan.latches().faultController(run, image, "a scan failed: " + broken);
    }

    private void restEverything() {
        try {
            gate.restAll();
        } catch (final RuntimeException broken) {
            // every other line was rested before this came; the fault that is being latched says why it was needed
            image.note(new Event.Limited(run.atNs(), "a line that cannot be written", broken.toString()));
        }
        plan.drivers().restAll(run);
        for (int output = 0; output < image.energised.length; output++) {
            image.next[output] = false;
            image.permitted[output] = false;
            if (image.energised[output]) {
                image.energised[output] = false;
                changed(output, false);
            }
        }
    }

    /** A store that fails is told once and tried again by every scan: a dead disk must not stop the scan (S22). */
    private void keepLatches() {
        if (!run.hasChanged() && !owesKeeping) {
            return;
        }
        final long signature = signature();
        if (signature == keptSignature && !owesKeeping) {
            return;
        }
        try {
            ports.store().keep(plan.modes().kept(run, plan.guards().spent(run)));
            keptSignature = signature;
            owesKeeping = false;
            hasToldOfKeeping = false;
        } catch (final LatchStore.NotYetException slow) {
            owesKeeping = true;
        } catch (final RuntimeException broken) {
            if (!hasToldOfKeeping) {
                image.note(new Event.Commanded(run.atNs(), "keeping latches over a restart", false, broken.toString()));
            }
            owesKeeping = true;
            hasToldOfKeeping = true;
        }
    }

    private long signature() {
        return 31 * plan.modes().signature(run) + plan.guards().spent(run).hashCode();
    }

    private boolean isAllAtRest() {
        for (final boolean isEnergised : image.energised) {
            if (isEnergised) {
                return false;
            }
        }
        return true;
    }

    private String name(final int output) {
        return plan.places().outputs().get(output).name();
    }

    /** Commands come in here, from any thread. */
    public Commands commandDesk() {
        return commands;
    }

    /** What energising requests must quote. */
    public long latchGeneration() {
        return plan.latches().generation(run);
    }

    /** The gate, for the supervisor. */
    public Gate gate() {
        return gate;
    }

    /** The count of proved scans, for the supervisor. */
    public Heartbeat heartbeat() {
        return heartbeat;
    }

    /** What the steps of the last scan passed to each other; for looking, by the scan's own thread. */
    public Image image() {
        return image;
    }

    /** The run's cells, for comparing; by the scan's own thread. */
    public RunState run() {
        return run;
    }

    public Plan plan() {
        return plan;
    }

    /** Every output's account as of the last scan, in the order of the rig; by the scan's own thread. */
    public List<LedgerEntry> ledger() {
        return ledger(run.atNs());
    }

    /** The same at a moment since then, where quiet scans were passed over. */
    public List<LedgerEntry> ledger(final long nowNs) {
        return plan.ledger().entries(run, nowNs);
    }

    /** Every reason why an output may not be energised now; by the scan's own thread. */
    public List<Refusal> whyNot(final String output) {
        return plan.guards().whyNot(run, image, plan.places().output(output));
    }

    private static boolean[] restLevels(final List<Output> outputs) {
        final boolean[] levels = new boolean[outputs.size()];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = outputs.get(i).restLevel().isHigh();
        }
        return levels;
    }
}
