package slackwater.simulator.benchmark;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slackwater.controller.app.RigLoader;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.mode.Wall;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.scan.Ports;
import slackwater.controller.scan.Scan;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.simulator.bench.Setup;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.Keeper;

/**
 * The north controller of the sea cave, taken off its bench when it is armed and hot, with its lines in our hands. The show has
 * no schedule, so that any amount of time may pass without an evening's end.
 */
final class NorthBank {
    static final long PERIOD_NS = 10_000_000L;
    static final int SCANS_OF_A_PASSAGE = 7_000;

    private static final String NORTH = "north";
    private static final long OPEN_AND_HOT_NS = 600_000_000_000L;

    private final Rig rig;
    private final Scan scan;
    private final VirtualPins pins;
    private final boolean[] isActiveHigh;
    private final int outer;
    private final int inner;
    private final int low;
    private final int high;
    private final int reach;
    private long nowNs = OPEN_AND_HOT_NS;

    NorthBank(final Path folder) {
        final RigLoader.Loaded loaded = RigLoader.load(folder, Optional.empty());
        rig = loaded.rig().orElseThrow(() -> new IllegalStateException(loaded.text()));
        final Show show = new Show(loaded.show().name(), loaded.show().cues(), Optional.empty());
        final VirtualBench bench = new VirtualBench(Setup.of(rig, show));
        new Keeper(rig, show).open(bench);
        bench.runTo(nowNs);
        final Scan onBench = bench.scan(NORTH);
        final List<Input> inputs = onBench.plan().places().inputs();
        isActiveHigh = flags(inputs.size(), i -> inputs.get(i).activeLevel().isHigh());
        pins = new VirtualPins(
                flags(inputs.size(), i -> bench.yard().isInputHigh(rig.inputs().indexOf(inputs.get(i)), 0)),
                levels(onBench, bench));
        pins.setHoldUpSeenClosed(true);
        scan = onBench.fork(
                new Ports(pins, LatchStore.inMemory(Kept.NOTHING), event -> true, BoardWatchdog.NONE, SampleAge.NONE));
        scan.passOver(nowNs); // the bench may have passed over quiet scans at the end
        outer = onBench.plan().places().input("north-path-outer");
        inner = onBench.plan().places().input("north-path-inner");
        low = onBench.plan().places().input("north-beam-low");
        high = onBench.plan().places().input("north-beam-high");
        reach = onBench.plan().places().input("north-reach");
    }

    private boolean[] levels(final Scan onBench, final VirtualBench bench) {
        final List<Output> outputs = onBench.plan().places().outputs();
        return flags(
                outputs.size(), i -> bench.yard().isOutputHigh(rig.outputs().indexOf(outputs.get(i))));
    }

    private static boolean[] flags(final int count, final java.util.function.IntPredicate of) {
        final boolean[] flags = new boolean[count];
        for (int i = 0; i < count; i++) {
            flags[i] = of.test(i);
        }
        return flags;
    }

    VirtualPins pins() {
        return pins;
    }

    Scan scan() {
        return scan;
    }

    /** The next moment of the grid. */
    long tick() {
        nowNs += PERIOD_NS;
        return nowNs;
    }

    /** One scan; returns what it returns. */
    long scanOnce() {
        return scan.once(tick(), Wall.UNKNOWN);
    }

    /**
     * Sets the lines as they are at one scan of a passage: somebody tall walks in past both sensors and under the beams, lingers
     * half a second in the reach when all is over, and leaves; then a small one passes below the upper beam. With the time
     * until the next, a passage takes 70 s.
     */
    void passBy(final int at) {
        active(outer, isWithin(at, 100, 350));
        active(inner, isWithin(at, 220, 470));
        active(low, isWithin(at, 300, 340) || isWithin(at, 3_300, 3_340));
        active(high, isWithin(at, 301, 339));
        active(reach, isWithin(at, 1_500, 1_550));
    }

    private static boolean isWithin(final int at, final int from, final int until) {
        return at >= from && at < until;
    }

    private void active(final int input, final boolean isActive) {
        pins.set(input, isActive == isActiveHigh[input]);
    }
}
