package slackwater.simulator.yard;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import slackwater.model.Contact;
import slackwater.model.Controller;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Pull;
import slackwater.model.Rig;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.visitor.Crowd;

/**
 * The world on virtual pins: loads, plants, people and sensors, on a grid of 10 ms of its own. It knows nothing of what a
 * controller believes. The evening, and every sensor's warm-up, begins at 0. Between the moments at which something changes by
 * itself it is not stepped, and is bit for bit as if it had been.
 */
public final class Yard implements Truth {
    private static final long HAND_INACTIVE = 1;
    private static final long HAND_ACTIVE = 2;
    private static final long STUCK_HIGH = 1;
    private static final long STUCK_LOW = 2;
    private static final long OPEN = 3;
    private static final long CHATTER = 4;
    private static final List<OutputOverlay> OVERLAYS = List.of(OutputOverlay.values());

    private final Fixed fixed;
    private final State state;

    /** What never changes, shared by all copies. */
    private record Fixed(
            Plants plants,
            List<Plant> inOrder,
            List<Output> outputs,
            List<Input> inputs,
            List<Integer> controllerOf,
            List<Boolean> hasHoldUp,
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
        final List<String> names =
                rig.controllers().stream().map(Controller::name).toList();
        return new Fixed(
                plants,
                plants.inOrder(),
                rig.outputs(),
                rig.inputs(),
                rig.outputs().stream()
                        .map(output -> names.indexOf(output.controller()))
                        .toList(),
                rig.controllers().stream()
                        .map(controller -> controller.holdUp().isPresent())
                        .toList(),
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
        state.setHand(input, isActive ? HAND_ACTIVE : HAND_INACTIVE);
        if (isActive && !wasActive) {
            fixed.plants().hungBy(fixed.inputs().get(input)).ifPresent(release -> release.hang(state));
            wakeSoon();
        }
    }

    public void leaveAlone(final int input) {
        state.setHand(input, 0);
    }

    /** Somebody fills the tray of a mister. */
    public void refill(final int output) {
        tray(output).fill(state);
        wakeSoon();
    }

    /** Lays a fault over an input's line, at every controller that finds it; empty takes it away. */
    public void overlayInput(final int input, final Optional<InputOverlay> overlay) {
        long halfNs = 0;
        if (overlay.isPresent() && overlay.get() instanceof InputOverlay.Chatter chatter) {
            halfNs = State.ceilGridNs((chatter.periodNs() + 1) / 2);
        }
        state.setInputOverlay(input, overlay.map(Yard::code).orElse(0L), halfNs);
        wakeSoon();
    }

    /** Lays a fault over what an output feeds; empty takes it away. */
    public void overlayOutput(final int output, final Optional<OutputOverlay> overlay) {
        state.setOutputOverlay(
                output, overlay.map(fault -> OVERLAYS.indexOf(fault) + 1L).orElse(0L));
        feedLoads();
    }

    @Override
    public boolean isOutputHigh(final int output) {
        return state.isPinHigh(output);
    }

    @Override
    public boolean isInputHigh(final int input, final int controller) {
        final Input wired = fixed.inputs().get(input);
        final long overlay = state.inputOverlay(input);
        if (overlay == STUCK_HIGH || overlay == STUCK_LOW) {
            return overlay == STUCK_HIGH;
        }
        if (overlay == OPEN) {
            return wired.pull() == Pull.UP;
        }
        if (overlay == CHATTER) {
            return state.nowNs() / state.chatterHalfNs(input) % 2 == 0;
        }
        return isActive(input) == wired.activeLevel().isHigh();
    }

    /** What is true of an input, whatever its line shows. */
    public boolean isActive(final int input) {
        if (state.hand(input) != 0) {
            return state.hand(input) == HAND_ACTIVE;
        }
        return fixed.inputs().get(input).family() == InputFamily.STOP_LOOP
                ? !state.isStopLoopOpen()
                : state.isActive(input);
    }

    @Override
    public boolean isPowered(final int output) {
        return state.isPowered(output);
    }

    @Override
    public boolean isSupplied(final int controller) {
        return !state.isStopLoopOpen() && (!fixed.hasHoldUp().get(controller) || state.isPulledIn(controller));
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

    /** A heater's block: 0 as cold as the air, 1 at its thermostat's temperature. */
    public double warmth(final int output) {
        return fixed.plants()
                .heater(output)
                .orElseThrow(() -> notA("heater", output))
                .warmth(state);
    }

    /** Water left in a mister's tray, m3. */
    public double waterM3(final int output) {
        return tray(output).waterM3(state);
    }

    private WaterTray tray(final int output) {
        return fixed.plants().tray(output).orElseThrow(() -> notA("mister", output));
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
        wakesNs = Math.min(wakesNs, chatterWakesNs());
        final long soonNs = State.nextGridNs(gridNs);
        state.setWakeNs(wakesNs == Plant.ASLEEP ? wakesNs : Math.max(soonNs, State.ceilGridNs(wakesNs)));
    }

    private long chatterWakesNs() {
        long wakesNs = Plant.ASLEEP;
        for (int i = 0; i < fixed.inputs().size(); i++) {
            if (state.inputOverlay(i) == CHATTER) {
                final long halfNs = state.chatterHalfNs(i);
                wakesNs = Math.min(wakesNs, (state.nowNs() / halfNs + 1) * halfNs);
            }
        }
        return wakesNs;
    }

    private void wakeSoon() {
        state.setWakeNs(State.nextGridNs(state.nowNs()));
    }

    /** Works out afresh which loads have power; the plants see it at the next grid point. */
    private void feedLoads() {
        for (int i = 0; i < fixed.outputs().size(); i++) {
            state.setPowered(i, isFed(i));
        }
        wakeSoon();
    }

    private boolean isFed(final int output) {
        final long overlay = state.outputOverlay(output);
        final boolean isSupplied = isSupplied(fixed.controllerOf().get(output));
        if (overlay != 0) {
            return switch (OVERLAYS.get((int) overlay - 1)) {
                case WELDED -> isSupplied;
                case FED_ELSEWHERE -> true;
                case DEAD -> false;
            };
        }
        final Output wired = fixed.outputs().get(output);
        final boolean isEnergised =
                isSupplied && state.isPinHigh(output) == wired.energisedLevel().isHigh();
        // A load that is on at rest hangs on a contact outside the hold-up power (S15).
        return isEnergised == (wired.contact() == Contact.NORMALLY_OPEN);
    }

    private static long code(final InputOverlay overlay) {
        if (overlay instanceof InputOverlay.StuckHigh) {
            return STUCK_HIGH;
        }
        if (overlay instanceof InputOverlay.StuckLow) {
            return STUCK_LOW;
        }
        return overlay instanceof InputOverlay.Open ? OPEN : CHATTER;
    }

    private void requireNotBefore(final long nowNs) {
        if (nowNs < state.nowNs()) {
            throw new IllegalArgumentException("nowNs=" + nowNs + " is before the yard's " + state.nowNs());
        }
    }
}
