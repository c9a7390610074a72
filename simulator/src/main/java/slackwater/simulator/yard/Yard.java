package slackwater.simulator.yard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.simulator.visitor.Crowd;

/**
 * The world on virtual pins: loads, plants, people and sensors, on a grid of 10 ms of its own. It knows nothing of what a
 * controller believes. The evening, and every sensor's warm-up, begins at 0. Between the moments at which something changes by
 * itself it is not stepped, and is bit for bit as if it had been.
 */
public final class Yard implements Truth {
    private final Fixed fixed;
    private final State state;

    /** What never changes, shared by all copies. */
    private record Fixed(
            Plants plants,
            List<Plant> inOrder,
            Lines lines,
            List<Output> outputs,
            List<Input> inputs,
            List<Optional<HeaterBlock>> heaters,
            List<Optional<Prop>> props) {}

    public Yard(final Rig rig, final Crowd crowd, final long seed) {
        fixed = fixed(rig, new Plants(rig, crowd, seed));
        state = fixed.plants().begin();
        for (int i = 0; i < fixed.outputs().size(); i++) {
            state.setPinHigh(i, fixed.outputs().get(i).restLevel().isHigh());
        }
        feedLoads();
        goTo(0);
    }

    private Yard(final Fixed fixed, final State state) {
        this.fixed = fixed;
        this.state = state;
    }

    private static Fixed fixed(final Rig rig, final Plants plants) {
        return new Fixed(
                plants,
                plants.inOrder(),
                new Lines(rig),
                rig.outputs(),
                rig.inputs(),
                rig.outputs().stream().map(plants::heaterOf).toList(),
                forEach(rig.outputs().size(), plants::prop));
    }

    private static <T> List<T> forEach(final int count, final IntFunction<T> of) {
        return IntStream.range(0, count).mapToObj(of).toList();
    }

    /** The same yard at the same moment, to go its own way from here. */
    public Yard copy() {
        return new Yard(fixed, state.copy());
    }

    /** A number that differs, as good as surely, where two yards of one rig differ in anything. */
    public long fingerprint() {
        return state.fingerprint();
    }

    boolean isSameAs(final Yard other) {
        return state.isSameAs(other.state);
    }

    /** Goes on until a moment, pins as they are; a moment off the grid is taken back to the grid point before it. */
    public void step(final long nowNs) {
        requireNotBefore(nowNs);
        for (long nextNs = state.wakeNs(); nextNs <= nowNs; nextNs = state.wakeNs()) {
            goTo(nextNs);
        }
        state.setNowNs(Math.floorDiv(nowNs, State.GRID_NS) * State.GRID_NS);
    }

    /** As {@link #step}, but visits every grid point, asleep or not: what skipping is compared with. */
    void stepEveryGridPoint(final long nowNs) {
        requireNotBefore(nowNs);
        for (long nextNs = state.nowNs() + State.GRID_NS; nextNs <= nowNs; nextNs += State.GRID_NS) {
            goTo(nextNs);
        }
    }

    /** The first grid point at which anything could change if nobody touches anything; the greatest long for never. */
    public long wakeNs() {
        return state.wakeNs();
    }

    /** The grid point that it stands at. */
    public long nowNs() {
        return state.nowNs();
    }

    public void setOutputHigh(final int output, final boolean isHigh) {
        if (state.isPinHigh(output) != isHigh) {
            state.setPinHigh(output, isHigh);
            feedLoads();
        }
    }

    /** The external relay of a controller with a hold-up; it is open when the evening begins. */
    public void setHoldUp(final int controller, final boolean isPulledIn) {
        if (state.isPulledIn(controller) != isPulledIn) {
            state.setPulledIn(controller, isPulledIn);
            feedLoads();
        }
    }

    /** Somebody presses an emergency stop, or pulls it out again. */
    public void pressStopLoop(final boolean isOpen) {
        if (state.isStopLoopOpen() != isOpen) {
            state.setStopLoopOpen(isOpen);
            feedLoads();
        }
    }

    /** A hand on a button or a key, or a signal in place of a sensor's; lasts until {@link #leaveAlone}. */
    public void hold(final int input, final boolean isActive) {
        final boolean wasActive = isActive(input);
        fixed.lines().hold(state, input, isActive);
        if (isActive && !wasActive) {
            fixed.plants().hungBy(fixed.inputs().get(input)).ifPresent(release -> release.hang(state));
            fixed.plants().filledWith(fixed.inputs().get(input)).forEach(fill -> fill.accept(state));
            wakeSoon();
        }
    }

    public void leaveAlone(final int input) {
        state.setHand(input, 0);
    }

    /** Somebody fills the tray of a mister or the bottle of a pump. */
    public void refill(final int output) {
        if (fixed.plants().pump(output).isPresent()) {
            pump(output).fill(state);
        } else {
            tray(output).fill(state);
        }
        wakeSoon();
    }

    /** Somebody closes a circuit's breaker again. */
    public void resetBreaker(final String circuit) {
        mains().reset(state, circuitNamed(circuit));
        wakeSoon();
    }

    /** Something in a circuit leaks so much to ground, amperes; 0 ends it. */
    public void leakToGround(final String circuit, final double amps) {
        mains().leak(state, circuitNamed(circuit), amps);
        wakeSoon();
    }

    /** Lays a fault over an input's line, at every controller that finds it; empty takes it away. */
    public void overlayInput(final int input, final Optional<InputOverlay> overlay) {
        fixed.lines().overlay(state, input, overlay);
        wakeSoon();
    }

    /** Lays a fault over what an output feeds; empty takes it away. */
    public void overlayOutput(final int output, final Optional<OutputOverlay> overlay) {
        state.setOutputOverlay(output, Feeds.code(overlay));
        feedLoads();
    }

    @Override
    public boolean isOutputHigh(final int output) {
        return state.isPinHigh(output);
    }

    @Override
    public boolean isInputHigh(final int input, final int controller) {
        return fixed.lines().isHigh(state, input);
    }

    /** What is true of an input, whatever its line shows. */
    public boolean isActive(final int input) {
        return fixed.lines().isActive(state, input);
    }

    @Override
    public boolean isPowered(final int output) {
        return state.isPowered(output);
    }

    @Override
    public boolean isSupplied(final int controller) {
        return fixed.plants().feeds().isSupplied(state, controller);
    }

    @Override
    public int peopleInReach(final int output) {
        return state.peopleInReach(output);
    }

    @Override
    public boolean isMoving(final int output) {
        final Optional<Prop> prop = fixed.props().get(output);
        return prop.isPresent() && prop.get().isMoving(state);
    }

    @Override
    public double energyJ(final int output) {
        final Optional<Prop> prop = fixed.props().get(output);
        return prop.isPresent() ? prop.get().energyJ(state) : 0;
    }

    @Override
    public boolean isHotEnough(final int output) {
        final Optional<HeaterBlock> heater = fixed.heaters().get(output);
        return heater.isEmpty() || heater.get().isHot(state);
    }

    @Override
    public boolean hasWater(final int output) {
        final Optional<WaterTray> tray = fixed.plants().tray(output);
        return tray.isEmpty() || tray.get().hasWater(state);
    }

    @Override
    public boolean hasFluid(final int output) {
        final Optional<FogPump> pump = fixed.plants().pump(output);
        return pump.isEmpty() || pump.get().hasFluid(state);
    }

    /** The highest of all sections, as somebody who works on any of them must ask. */
    @Override
    public double pressurePa() {
        double highestPa = 0;
        for (final AirSection section : fixed.plants().sections()) {
            highestPa = Math.max(highestPa, section.pressurePa(state));
        }
        return highestPa;
    }

    /** How many people are in the yard, as last looked at. */
    public int present() {
        return state.present();
    }

    /** Gauge pressure in the air store, pascals; 0 where the rig tells of none. */
    public double tankPa() {
        return fixed.plants().tank().map(tank -> tank.pressurePa(state)).orElse(0.0);
    }

    /** Gauge pressure on the line of a valve or an air supply, pascals. */
    public double linePa(final int output) {
        return fixed.plants().line(output).pressurePa(state);
    }

    /** Where the moving part of a cylinder stands: 0 at rest, 1 at the end of its travel. */
    public double position(final int output) {
        return fixed.plants()
                .cylinder(output)
                .orElseThrow(() -> notA("cylinder", output))
                .position(state);
    }

    /** A stroke of a cylinder as it would be on a full line; empty for anything else. */
    public Optional<StrokeTrial> strokeTrial(final int output) {
        return fixed.plants().cylinder(output).map(CylinderProp::trial);
    }

    /** Energy with which a prop last came to the end of its travel or of its fall, joules; 0 before, and for what has none. */
    public double landedJ(final int output) {
        final Optional<Prop> prop = fixed.props().get(output);
        return prop.isPresent() ? prop.get().landedJ(state) : 0;
    }

    /** How often the compressor has started. */
    public long compressorStarts() {
        return fixed.plants().tank().map(tank -> tank.starts(state)).orElse(0L);
    }

    /** Where the air has gone since the evening began; nothing where the rig tells of no tank. */
    public AirBalance airBalance() {
        double linesM3 = 0;
        double ventedM3 = 0;
        for (final AirSection section : fixed.plants().sections()) {
            linesM3 += section.holdsM3(state);
            ventedM3 += section.ventedM3(state);
        }
        final Tank.Balance tank =
                fixed.plants().tank().map(store -> store.balance(state)).orElse(new Tank.Balance(0, 0, 0, 0));
        return new AirBalance(tank.storedM3(), linesM3, ventedM3, tank.leakedM3(), tank.deliveredM3());
    }

    /** Temperature of a heater's block, degC. */
    public double blockC(final int output) {
        return block(output).temperatureC(state);
    }

    /** Where the energy of a heater's block has gone. */
    public HeatBalance heat(final int output) {
        return block(output).balance(state);
    }

    /** Fluid left in a pump's bottle, kg; infinite where nobody told what it holds. */
    public double fluidKg(final int output) {
        return pump(output).leftKg(state);
    }

    /** How long a pump or a mister has run on nothing this evening, seconds. */
    public double dryS(final int output) {
        return fixed.plants().pump(output).isPresent()
                ? pump(output).dryS(state)
                : tray(output).dryS(state);
    }

    /** How often a strobe has flashed this evening, by its pulses or by itself. */
    public long flashesSoFar(final int output) {
        return fixed.plants()
                .strobe(output)
                .orElseThrow(() -> notA("strobe", output))
                .flashes(state);
    }

    /** Wind at a moment, m/s; it follows from the rig's weather and the seed alone. */
    public double windMPerS(final long atNs) {
        return fixed.plants().wind().speedMPerS(atNs);
    }

    /** In a circuit, or out of a power supply, amperes at its own voltage. */
    public double currentA(final String name) {
        final OptionalInt supply = mains().supply(name);
        return supply.isPresent()
                ? mains().supplyA(state, supply.getAsInt())
                : mains().circuitA(state, circuitNamed(name));
    }

    /** Whether a circuit's breaker has tripped and nobody has reset it. */
    public boolean isTripped(final String circuit) {
        return mains().isTripped(state, circuitNamed(circuit));
    }

    /** Water left in a mister's tray, m3. */
    public double waterM3(final int output) {
        return tray(output).waterM3(state);
    }

    private WaterTray tray(final int output) {
        return fixed.plants().tray(output).orElseThrow(() -> notA("mister", output));
    }

    private FogPump pump(final int output) {
        return fixed.plants().pump(output).orElseThrow(() -> notA("pump", output));
    }

    private HeaterBlock block(final int output) {
        return fixed.plants().heater(output).orElseThrow(() -> notA("heater", output));
    }

    private Mains mains() {
        return fixed.plants().mains();
    }

    private int circuitNamed(final String name) {
        return mains().circuit(name).orElseThrow(() -> new IllegalArgumentException("the rig has no circuit=" + name));
    }

    private IllegalArgumentException notA(final String family, final int output) {
        return new IllegalArgumentException(
                "output " + output + ", " + fixed.outputs().get(output).name() + ", is no " + family);
    }

    private void goTo(final long gridNs) {
        state.setNowNs(gridNs);
        for (final Plant plant : fixed.inOrder()) {
            plant.step(state);
        }
        if (state.forgetShortPulses()) {
            wakeSoon();
            return;
        }
        long wakesNs = Plant.ASLEEP;
        for (final Plant plant : fixed.inOrder()) {
            wakesNs = Math.min(wakesNs, plant.wakesNs(state));
        }
        wakesNs = Math.min(wakesNs, fixed.lines().chatterWakesNs(state));
        final long soonNs = State.nextGridNs(gridNs);
        state.setWakeNs(wakesNs == Plant.ASLEEP ? wakesNs : Math.max(soonNs, State.ceilGridNs(wakesNs)));
    }

    private void wakeSoon() {
        state.setWakeNs(State.nextGridNs(state.nowNs()));
    }

    /** Works out afresh which loads have power; the plants see it at the next grid point. */
    private void feedLoads() {
        fixed.plants().feeds().feed(state);
        wakeSoon();
    }

    private void requireNotBefore(final long nowNs) {
        if (nowNs < state.nowNs()) {
            throw new IllegalArgumentException("nowNs=" + nowNs + " is before the yard's " + state.nowNs());
        }
    }
}
