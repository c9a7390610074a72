package slackwater.simulator.bench;

import java.util.ArrayList;
import java.util.List;
import slackwater.controller.journal.Journal;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.ledger.LedgerStore;
import slackwater.controller.mode.Wall;
import slackwater.controller.pins.Pins;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.scan.Ports;
import slackwater.controller.scan.Scan;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;
import slackwater.model.Controller;
import slackwater.model.HoldUp;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.event.Event;
import slackwater.simulator.yard.Yard;

/** One controller on the bench: its real scan, its virtual pins, and the wires between those and the yard. */
final class Station {
    private final int controller;
    private final Controller made;
    private final Plan plan;
    private final int[] inputs;
    private final int[] outputs;
    private final List<Output.Feedback> feedback;
    private final boolean[] isActiveHigh;
    private final boolean[] isEnergisedHigh;
    private final VirtualPins pins;
    private final HoldUpRelay relay;
    private final LatchStore store;
    private final LedgerStore ledgers;
    private final List<Event> fresh = new ArrayList<>();
    private final Scan scan;
    private long wakeNs;
    private boolean isFrozen;
    private boolean wasFrozen;
    private boolean hasNews = true;
    private long scans;

    Station(final Rig rig, final int controller, final Setup setup, final Yard yard) {
        this.controller = controller;
        made = rig.controllers().get(controller);
        final Options options = Options.plain(setup.seed()).with(setup.codes());
        plan = Plan.compile(rig, setup.show(), made.name(), options);
        inputs = plan.places().inputs().stream().mapToInt(rig.inputs()::indexOf).toArray();
        outputs = plan.places().outputs().stream()
                .mapToInt(rig.outputs()::indexOf)
                .toArray();
        feedback = plan.places().outputs().stream().map(Output::feedback).toList();
        isActiveHigh = flags(
                inputs.length, i -> plan.places().inputs().get(i).activeLevel().isHigh());
        isEnergisedHigh = flags(
                outputs.length,
                i -> plan.places().outputs().get(i).energisedLevel().isHigh());
        pins = new VirtualPins(
                flags(inputs.length, i -> yard.isInputHigh(inputs[i], controller)),
                flags(outputs.length, i -> !isEnergisedHigh[i]));
        relay = new HoldUpRelay(
                made.holdUp().isPresent(),
                made.holdUp().map(HoldUp::dropOut).map(each -> each.toNanos()).orElse(0L));
        store = LatchStore.inMemory(setup.kept());
        ledgers = LedgerStore.inMemory(setup.ledger());
        scan = new Scan(plan, ports(pins, store, ledgers, fresh));
    }

    private Station(final Station other) {
        controller = other.controller;
        made = other.made;
        plan = other.plan;
        inputs = other.inputs;
        outputs = other.outputs;
        feedback = other.feedback;
        isActiveHigh = other.isActiveHigh;
        isEnergisedHigh = other.isEnergisedHigh;
        pins = other.pins.copy();
        relay = other.relay.copy();
        store = LatchStore.inMemory(other.store.read().orElseThrow());
        ledgers = LedgerStore.inMemory(other.ledgers.read().orElseThrow());
        scan = other.scan.fork(ports(pins, store, ledgers, fresh));
        wakeNs = other.wakeNs;
        isFrozen = other.isFrozen;
        wasFrozen = other.wasFrozen;
        hasNews = other.hasNews;
        scans = other.scans;
    }

    Station copy() {
        return new Station(this);
    }

    private static Ports ports(
            final VirtualPins pins, final LatchStore store, final LedgerStore ledgers, final List<Event> events) {
        final Journal journal = events::add;
        return new Ports(pins, store, ledgers, journal, BoardWatchdog.NONE, SampleAge.NONE);
    }

    /** Brings the yard's levels to the pins. */
    void sense(final long atNs, final long periodNs, final Yard yard, final BenchListener listener) {
        for (int i = 0; i < inputs.length; i++) {
            final boolean isHigh = yard.isInputHigh(inputs[i], controller);
            if (pins.set(i, isHigh)) {
                hasNews = true;
                listener.input(atNs, inputs[i], controller, isHigh == isActiveHigh[i]);
            }
        }
        for (int o = 0; o < outputs.length; o++) {
            readBack(o, yard);
        }
        if (relay.isThere()) {
            if (isFed()) {
                relay.passedOver(atNs - periodNs); // scans passed over since the last moment made their edges
            }
            final boolean isClosed = relay.isClosedAt(atNs);
            yard.setHoldUp(controller, isClosed);
            if (pins.isHoldUpSeenClosed() != isClosed) {
                pins.setHoldUpSeenClosed(isClosed);
                hasNews = true;
            }
        }
    }

    /** Runs the scan, or passes over it when nothing could change. */
    void scan(final long atNs, final long periodNs, final Wall wall, final boolean skipsQuiet) {
        if (isFrozen) {
            return;
        }
        final boolean isQuiet = !hasNews && !scan.commandDesk().hasNews() && atNs < wakeNs;
        if (skipsQuiet && isQuiet) {
            return;
        }
        if (scans > 0 && skipsQuiet && !wasFrozen) {
            scan.passOver(atNs - periodNs);
        }
        wasFrozen = false;
        hasNews = false;
        wakeNs = Math.max(scan.once(atNs, wall), atNs + 1);
        scans++;
        relay.scanned(atNs, pins.holdUpEdges());
    }

    /** Takes the pins' levels to the yard and tells of changes. */
    void drive(final long atNs, final Yard yard, final Digest digest, final BenchListener listener) {
        for (int o = 0; o < outputs.length; o++) {
            final boolean isHigh = pins.isOutputHigh(o);
            if (yard.isOutputHigh(outputs[o]) != isHigh) {
                yard.setOutputHigh(outputs[o], isHigh);
                digest.add(atNs, controller, outputs[o], isHigh);
                listener.output(atNs, outputs[o], isHigh == isEnergisedHigh[o]);
            }
        }
        for (final Event event : fresh) {
            listener.event(controller, event);
        }
        fresh.clear();
        if (relay.isThere()) {
            yard.setHoldUp(controller, relay.isClosedAt(atNs));
        }
    }

    /** The next moment at which it must be looked at if nothing touches it. */
    long wakeNs() {
        return Math.min(isFrozen ? Long.MAX_VALUE : wakeNs, isFed() ? Long.MAX_VALUE : relay.dropsAtNs());
    }

    boolean hasNews() {
        return hasNews || scan.commandDesk().hasNews();
    }

    void wake() {
        hasNews = true;
    }

    /**
     * The computer hangs with its pins as they are, or goes on.
     *
     * @param scannedNs the last moment at which it has scanned, or would have, had it not been quiet
     */
    void freeze(final boolean isNowFrozen, final long scannedNs) {
        if (isNowFrozen && !isFrozen && scans > 0) {
            if (isFed()) {
                relay.passedOver(scannedNs);
            }
            scan.passOver(scannedNs);
        }
        wasFrozen |= isFrozen;
        isFrozen = isNowFrozen;
        hasNews = true;
    }

    Scan scan() {
        return scan;
    }

    Plan plan() {
        return plan;
    }

    long scans() {
        return scans;
    }

    /** An input's line goes away and comes back before the next sample. */
    void pulse(final int input) {
        for (int i = 0; i < inputs.length; i++) {
            if (inputs[i] == input) {
                pins.pulse(i);
                hasNews = true;
            }
        }
    }

    private boolean isFed() {
        return !isFrozen && relay.isBeingPulsed();
    }

    private void readBack(final int output, final Yard yard) {
        if (feedback.get(output) == Output.Feedback.NONE) {
            return;
        }
        final boolean isOn = feedback.get(output) == Output.Feedback.LOAD
                ? yard.isPowered(outputs[output])
                : yard.isOutputHigh(outputs[output]) == isEnergisedHigh[output];
        final Pins.ReadBack known = isOn ? Pins.ReadBack.ENERGISED : Pins.ReadBack.AT_REST;
        if (pins.readBack(output) != known) {
            pins.setReadBack(output, known);
            hasNews = true;
        }
    }

    private static boolean[] flags(final int count, final java.util.function.IntPredicate of) {
        final boolean[] flags = new boolean[count];
        for (int i = 0; i < count; i++) {
            flags[i] = of.test(i);
        }
        return flags;
    }
}
