package slackwater.simulator.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slackwater.controller.command.Commands;
import slackwater.controller.mode.Wall;
import slackwater.controller.scan.Scan;
import slackwater.model.Rig;
import slackwater.model.event.Refusal;
import slackwater.simulator.referee.Act;
import slackwater.simulator.referee.Referee;
import slackwater.simulator.referee.Violation;
import slackwater.simulator.yard.InputOverlay;
import slackwater.simulator.yard.OutputOverlay;
import slackwater.simulator.yard.Yard;

/**
 * A rig on a desk: every controller's real scan on virtual pins, the yard around them, and the referee who watches. Time
 * passes only when told to. Within one moment: hands act, the yard moves, inputs are sensed, the controllers scan in the
 * order of the rig, pins drive the yard, the referee looks.
 */
public final class VirtualBench {
    private static final long NS_PER_MS = 1_000_000L;

    private final Rig rig;
    private final long periodNs;
    private final long startEpochMs;
    private final boolean skipsQuiet;
    private final Yard yard;
    private final List<Station> stations;
    private final Referee referee;
    private final Digest digest;
    private final List<Script> script;
    private BenchListener listener = BenchListener.NOBODY;
    private long nowNs;
    private long scannedNs;
    private boolean hasBegun;
    private long wallOffsetMs;
    private boolean isWallTrusted = true;

    /** Something that a person does at a moment. */
    private record Script(long atNs, Deed deed) {}

    /** What a person does to a bench. */
    public interface Deed {
        void on(VirtualBench bench);
    }

    public VirtualBench(final Setup setup) {
        rig = setup.rig();
        periodNs = rig.scan().toNanos();
        startEpochMs = setup.startEpochMs();
        skipsQuiet = setup.skipsQuiet();
        yard = new Yard(rig, setup.crowd(), setup.seed());
        stations = new ArrayList<>();
        for (int i = 0; i < rig.controllers().size(); i++) {
            stations.add(new Station(rig, i, setup, yard));
        }
        referee = Referee.of(rig);
        digest = new Digest();
        script = new ArrayList<>();
    }

    private VirtualBench(final VirtualBench other) {
        rig = other.rig;
        periodNs = other.periodNs;
        startEpochMs = other.startEpochMs;
        skipsQuiet = other.skipsQuiet;
        yard = other.yard.copy();
        stations = new ArrayList<>(other.stations.stream().map(Station::copy).toList());
        referee = other.referee.copy();
        digest = other.digest.copy();
        script = new ArrayList<>(other.script);
        nowNs = other.nowNs;
        scannedNs = other.scannedNs;
        hasBegun = other.hasBegun;
        wallOffsetMs = other.wallOffsetMs;
        isWallTrusted = other.isWallTrusted;
    }

    /** The same bench at the same moment, to go its own way from here; nobody listens to it. */
    public VirtualBench fork() {
        return new VirtualBench(this);
    }

    public VirtualBench listen(final BenchListener next) {
        listener = next;
        return this;
    }

    /** Has a person do something at a moment from the run's start; in the order given where moments are equal. */
    public VirtualBench at(final Duration moment, final Deed deed) {
        script.add(new Script(moment.toNanos(), deed));
        script.sort(Comparator.comparingLong(Script::atNs));
        return this;
    }

    /** Sets an input as a hand, or somebody in front of it, would: until {@link #leave}. */
    public VirtualBench set(final String input, final boolean isActive) {
        yard.hold(inputIndex(input), isActive);
        stations.forEach(Station::wake);
        return this;
    }

    /** Takes the hand away: the yard decides again. */
    public VirtualBench leave(final String input) {
        yard.leaveAlone(inputIndex(input));
        stations.forEach(Station::wake);
        return this;
    }

    /** Sets an input for less than a scan: the line has been away and is back before the next sample. */
    public VirtualBench pulse(final String input) {
        final int index = inputIndex(input);
        for (final Station station : stations) {
            station.pulse(index);
        }
        return this;
    }

    /** Somebody presses the hard-wired stop, or pulls it out again. */
    public VirtualBench pressStop(final boolean isPressed) {
        yard.pressStopLoop(isPressed);
        return this;
    }

    /** Lays a fault over an input's line; empty heals it. */
    public VirtualBench inject(final String input, final Optional<InputOverlay> fault) {
        yard.overlayInput(inputIndex(input), fault);
        return this;
    }

    /** Lays a fault over what an output feeds; empty heals it. */
    public VirtualBench injectOutput(final String output, final Optional<OutputOverlay> fault) {
        yard.overlayOutput(outputIndex(output), fault);
        return this;
    }

    /** A controller's computer hangs with its pins as they are, or goes on. */
    public VirtualBench freeze(final String controller, final boolean isFrozen) {
        station(controller).freeze(isFrozen, scannedNs);
        return this;
    }

    /** Wall time jumps by so much, or is no longer known to be right; the run's own time goes on. */
    public VirtualBench jumpWall(final Duration by, final boolean isTrusted) {
        wallOffsetMs += by.toMillis();
        isWallTrusted = isTrusted;
        stations.forEach(Station::wake);
        return this;
    }

    /** Tells the referee what a person did that no pin shows. */
    public VirtualBench tell(final Act act) {
        referee.act(nowNs, act);
        return this;
    }

    /** Lets time pass. */
    public VirtualBench advance(final Duration time) {
        return runTo(nowNs + time.toNanos());
    }

    /** Lets time pass up to a moment from the run's start, everything at that moment included. */
    public VirtualBench runTo(final long untilNs) {
        if (!hasBegun) {
            hasBegun = true;
            moment();
        }
        while (nowNs < untilNs) {
            final long nextNs = Math.min(nextNs(), lastGridNs(untilNs));
            if (nextNs <= nowNs) {
                break;
            }
            lookBetween(nextNs);
            nowNs = nextNs;
            moment();
        }
        return this;
    }

    public long nowNs() {
        return nowNs;
    }

    /** Whether an output's pin is at its energised level, by the rig's polarity. */
    public boolean isEnergised(final String output) {
        final int index = outputIndex(output);
        return yard.isOutputHigh(index)
                == rig.outputs().get(index).energisedLevel().isHigh();
    }

    /** Every reason why an output may not be energised now; none when it may. */
    public List<Refusal> whyNot(final String output) {
        return scanOf(output).whyNot(output);
    }

    /** SHA-256 over every pin change so far. */
    public String digest() {
        return digest.hex();
    }

    /** What the referee has found so far. */
    public List<Violation> violations() {
        return referee.violations();
    }

    public Referee referee() {
        return referee;
    }

    /** The yard, to look at. */
    public Yard yard() {
        return yard;
    }

    public Rig rig() {
        return rig;
    }

    /** Scans that were really run, of all controllers. */
    public long scans() {
        return stations.stream().mapToLong(Station::scans).sum();
    }

    /** The desk of a controller, for commands. */
    public Commands commands(final String controller) {
        return station(controller).scan().commandDesk();
    }

    /** A controller's scan, to look at. */
    public Scan scan(final String controller) {
        return station(controller).scan();
    }

    private void moment() {
        scannedNs = Math.max(0, nowNs - periodNs); // for hands that act before the scans of this moment
        if (yard.nowNs() < scannedNs) {
            // A yard that slept through passed-over moments must not feel a hand before it acts.
            yard.step(scannedNs);
        }
        while (!script.isEmpty() && script.get(0).atNs() <= nowNs) {
            script.remove(0).deed().on(this);
        }
        yard.step(nowNs);
        for (final Station station : stations) {
            station.sense(nowNs, periodNs, yard, listener);
        }
        final Wall wall = new Wall(startEpochMs + wallOffsetMs + nowNs / NS_PER_MS, isWallTrusted);
        for (final Station station : stations) {
            station.scan(nowNs, periodNs, wall, skipsQuiet);
        }
        scannedNs = nowNs;
        for (final Station station : stations) {
            station.drive(nowNs, yard, digest, listener);
        }
        referee.look(nowNs, yard);
        listener.moment(nowNs);
    }

    /** Deadlines of the referee fire without edges, between the bench's own moments too. */
    private void lookBetween(final long nextNs) {
        long wakeNs = referee.wakeNs();
        while (wakeNs > nowNs && wakeNs < nextNs) {
            referee.look(wakeNs, yard);
            final long again = referee.wakeNs();
            if (again <= wakeNs) {
                return;
            }
            wakeNs = again;
        }
    }

    private long nextNs() {
        final long following = nowNs + periodNs;
        if (!skipsQuiet) {
            return following;
        }
        long next = Math.min(
                yard.wakeNs(), script.isEmpty() ? Long.MAX_VALUE : script.get(0).atNs());
        for (final Station station : stations) {
            next = Math.min(next, station.hasNews() ? following : station.wakeNs());
        }
        return next == Long.MAX_VALUE ? next : Math.max(following, ceilGridNs(next));
    }

    private long ceilGridNs(final long atNs) {
        return (atNs + periodNs - 1) / periodNs * periodNs;
    }

    private long lastGridNs(final long untilNs) {
        return untilNs / periodNs * periodNs;
    }

    private Scan scanOf(final String output) {
        return station(rig.outputs().get(outputIndex(output)).controller()).scan();
    }

    private Station station(final String controller) {
        for (int i = 0; i < stations.size(); i++) {
            if (rig.controllers().get(i).name().equals(controller)) {
                return stations.get(i);
            }
        }
        throw new IllegalArgumentException("the rig has no controller=" + controller);
    }

    private int inputIndex(final String name) {
        return rig.input(name)
                .map(rig.inputs()::indexOf)
                .orElseThrow(() -> new IllegalArgumentException("the rig has no input=" + name));
    }

    private int outputIndex(final String name) {
        return rig.output(name)
                .map(rig.outputs()::indexOf)
                .orElseThrow(() -> new IllegalArgumentException("the rig has no output=" + name));
    }
}
