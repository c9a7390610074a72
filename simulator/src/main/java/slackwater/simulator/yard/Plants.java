package slackwater.simulator.yard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Predicate;
import slackwater.model.Air;
import slackwater.model.Facts;
import slackwater.model.Input;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Weather;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.visitor.Crowd;

/** All plants of a rig, in the order in which they are stepped: causes before what they act on, sensors last. */
final class Plants {
    /** Where a rig tells nothing of its air, it has enough of it at this gauge pressure (common practice, no source). */
    private static final double USUAL_WORKING_PA = 250_000;

    /** Mains where the rig tells of no circuit (an assumption). */
    private static final double USUAL_VOLTS = 230;

    private final Rig rig;
    private final long seed;
    private final Slots slots;
    private final List<Plant> inOrder = new ArrayList<>();
    private final List<AirSection> sections = new ArrayList<>();
    private final List<Output> supplies = new ArrayList<>();
    private final Map<Integer, HeaterBlock> heaters = new HashMap<>();
    private final Map<Integer, FogPump> pumps = new HashMap<>();
    private final Map<Integer, FlashLight> strobes = new HashMap<>();
    private final Map<Integer, WaterTray> trays = new HashMap<>();
    private final Map<Integer, Release> releases = new HashMap<>();
    private final Map<Integer, Prop> props = new HashMap<>();
    private final Map<Integer, CylinderProp> cylinders = new HashMap<>();
    private final List<Beam> beams = new ArrayList<>();
    private final List<MotionSensor> motions = new ArrayList<>();
    private final List<Optional<Relay>> relays = new ArrayList<>();
    private final List<Puffs> puffs = new ArrayList<>();
    private final Sources sources;
    private final Feeds feeds;
    private final Wind wind;
    private final Optional<Tank> tank;
    private final Fog fog;
    private final Mains mains;

    Plants(final Rig rig, final Crowd crowd, final long seed) {
        this.rig = rig;
        this.seed = seed;
        slots = new Slots(rig);
        wind = new Wind(rig.surroundings().weather(), seed);
        sources = new Sources(rig, slots);
        rig.outputs().forEach(output -> relays.add(relay(output)));
        feeds = new Feeds(rig, relays, sources);
        inOrder.add(new Lookout(rig, crowd));
        add(new Relays(relays.stream().flatMap(Optional::stream).toList(), feeds));
        tank = rig.surroundings().air().map(air -> add(new Tank(air, sources::isCompressorLive, slots)));
        addSections();
        for (int i = 0; i < rig.inputs().size(); i++) {
            if (rig.inputs().get(i).family() == InputFamily.BEAM) {
                beams.add(new Beam(i, rig.inputs().get(i), slots));
            }
        }
        addPumps();
        addHeaters();
        for (int i = 0; i < rig.outputs().size(); i++) {
            addOutput(i, rig.outputs().get(i));
        }
        inOrder.addAll(sections); // after the valves that they feed, before the switches that feel them
        addPuffs();
        fog = add(new Fog(puffs, beams, wind, seed));
        for (int i = 0; i < rig.inputs().size(); i++) {
            addInput(i, rig.inputs().get(i));
        }
        inOrder.addAll(beams);
        mains = add(new Mains(sources, feeds, draws(), slots));
    }

    /** Everything as it stands before the evening: tank and trays full, nothing energised. */
    State begin() {
        final State state = slots.newState();
        tank.ifPresent(store ->
                store.fill(state, rig.surroundings().air().map(Air::cutOutPa).orElse(0.0)));
        sections.forEach(section -> section.begin(state));
        cylinders.values().forEach(cylinder -> cylinder.begin(state));
        trays.values().forEach(tray -> tray.fill(state));
        pumps.values().forEach(pump -> pump.fill(state));
        heaters.values().forEach(block -> block.begin(state));
        puffs.forEach(each -> each.begin(state));
        relays.forEach(relay -> relay.ifPresent(slow -> slow.begin(state)));
        mains.begin(state);
        motions.forEach(motion -> motion.begin(state));
        return state;
    }

    List<Plant> inOrder() {
        return List.copyOf(inOrder);
    }

    Feeds feeds() {
        return feeds;
    }

    Mains mains() {
        return mains;
    }

    Wind wind() {
        return wind;
    }

    Optional<FogPump> pump(final int output) {
        return Optional.ofNullable(pumps.get(output));
    }

    Optional<FlashLight> strobe(final int output) {
        return Optional.ofNullable(strobes.get(output));
    }

    Optional<Tank> tank() {
        return tank;
    }

    List<AirSection> sections() {
        return sections;
    }

    Optional<CylinderProp> cylinder(final int output) {
        return Optional.ofNullable(cylinders.get(output));
    }

    Optional<Prop> prop(final int output) {
        return Optional.ofNullable(props.get(output));
    }

    Optional<WaterTray> tray(final int output) {
        return Optional.ofNullable(trays.get(output));
    }

    Optional<Release> release(final int output) {
        return Optional.ofNullable(releases.get(output));
    }

    Optional<HeaterBlock> heater(final int output) {
        return Optional.ofNullable(heaters.get(output));
    }

    /** The block that a pump is heated by. */
    Optional<HeaterBlock> heaterOf(final Output pump) {
        return named(pump.facts().text(Fact.HEATED_BY)).flatMap(this::heater);
    }

    /** The release whose hanging a button shows. */
    Optional<Release> hungBy(final Input button) {
        return button.use() == Input.Use.HUNG
                ? named(button.facts().text(Fact.OF)).flatMap(this::release)
                : Optional.empty();
    }

    /** What somebody fills up who then presses a button that says so: what it names, or everything of its zone. */
    List<Consumer<State>> filledWith(final Input button) {
        if (button.use() != Input.Use.REFILL) {
            return List.of();
        }
        final Optional<String> only = button.facts().text(Fact.OF);
        final List<Consumer<State>> fills = new ArrayList<>();
        for (int i = 0; i < rig.outputs().size(); i++) {
            final Output output = rig.outputs().get(i);
            final boolean isMeant = only.isPresent()
                    ? only.get().equals(output.name())
                    : button.zone().equals(Optional.of(output.zone()));
            if (isMeant) {
                pump(i).ifPresent(pump -> fills.add(pump::fill));
                tray(i).ifPresent(tray -> fills.add(tray::fill));
            }
        }
        return fills;
    }

    private <P extends Plant> P add(final P plant) {
        inOrder.add(plant);
        return plant;
    }

    private void addSections() {
        final double workingPa = rig.surroundings().air().map(Air::workingPa).orElse(USUAL_WORKING_PA);
        for (int i = 0; i < rig.outputs().size(); i++) {
            if (rig.outputs().get(i).family() == Family.AIR_SUPPLY) {
                supplies.add(rig.outputs().get(i));
                sections.add(section(OptionalInt.of(i), rig.outputs().get(i).facts(), workingPa));
            }
        }
        final boolean usesAir = tank.isPresent()
                || rig.outputs().stream().anyMatch(output -> output.family() == Family.VALVE)
                || rig.inputs().stream().anyMatch(input -> input.family() == InputFamily.PRESSURE);
        if (sections.isEmpty() && usesAir) {
            sections.add(section(OptionalInt.empty(), Facts.NONE, workingPa));
        }
    }

    private AirSection section(final OptionalInt supply, final Facts facts, final double workingPa) {
        final OptionalDouble nominalM3PerS =
                rig.surroundings().air().map(air -> air.plate().flowM3PerS()).orElse(OptionalDouble.empty());
        return new AirSection(supply, facts, workingPa, nominalM3PerS, tank, slots);
    }

    private double airC() {
        return rig.surroundings().weather().orElse(Weather.USUAL).temperatureC();
    }

    private void addPumps() {
        for (int i = 0; i < rig.outputs().size(); i++) {
            if (rig.outputs().get(i).family() == Family.PUMP) {
                pumps.put(i, add(new FogPump(i, rig.outputs().get(i), airC(), slots)));
            }
        }
    }

    private void addHeaters() {
        for (int i = 0; i < rig.outputs().size(); i++) {
            final Output heater = rig.outputs().get(i);
            if (heater.family() == Family.HEATER) {
                final double volts = Sources.volts(rig, heater).orElse(USUAL_VOLTS);
                final BlockFigures figures = BlockFigures.of(heater, volts, airC());
                heaters.put(i, add(new HeaterBlock(i, figures, pumpsOf(heater.name()), slots)));
            }
        }
    }

    private List<FogPump> pumpsOf(final String heater) {
        final List<FogPump> found = new ArrayList<>();
        for (int i = 0; i < rig.outputs().size(); i++) {
            final Optional<String> by = rig.outputs().get(i).facts().text(Fact.HEATED_BY);
            if (by.isPresent() && by.get().equals(heater)) {
                pump(i).ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<Relay> relay(final Output output) {
        return output.load()
                .feed()
                .through()
                .filter(Relay::isSlow)
                .map(through -> new Relay(through, output.contact(), slots));
    }

    /** Fog and mist of everything that tells where it stands. */
    private void addPuffs() {
        final List<Fan> fans = new ArrayList<>();
        for (int i = 0; i < rig.outputs().size(); i++) {
            if (rig.outputs().get(i).family() == Family.FAN) {
                fans.add(Fan.of(i, rig.outputs().get(i)));
            }
        }
        for (int i = 0; i < rig.outputs().size(); i++) {
            fogSource(i, rig.outputs().get(i)).ifPresent(source -> puffs.add(new Puffs(source, fans, slots)));
        }
    }

    private Optional<FogSource> fogSource(final int index, final Output output) {
        final Optional<HeaterBlock> block = heaterOf(output);
        final Predicate<State> isHot = state -> block.isEmpty() || block.get().isHot(state);
        return output.at()
                .flatMap(at -> pump(index)
                        .map(pump -> FogSource.of(at, output.zone(), pump, isHot))
                        .or(() -> tray(index).map(tray -> FogSource.of(at, output.zone(), tray))));
    }

    private Draws draws() {
        final List<Load> loads = new ArrayList<>();
        final List<Predicate<State>> isDrawing = new ArrayList<>();
        for (int i = 0; i < rig.outputs().size(); i++) {
            final int index = i;
            loads.add(loadOf(index));
            isDrawing.add(
                    heater(i).<Predicate<State>>map(block -> block::isHeating).orElse(state -> state.isOn(index)));
        }
        loads.add(Sources.compressor(rig));
        isDrawing.add(state -> tank.isPresent() && tank.get().isFilling(state));
        return new Draws(loads, isDrawing, slots);
    }

    /** As told; a heater of which only the power is told draws what that power takes. */
    private Load loadOf(final int index) {
        final Output output = rig.outputs().get(index);
        final Load load = output.load();
        final Optional<Double> volts = Sources.volts(rig, output);
        if (heater(index).isEmpty() || load.amps() > 0 || volts.isEmpty()) {
            return load;
        }
        final double amps = heater(index).get().powerW() / volts.get();
        return new Load(amps, Math.max(amps, load.inrushAmps()), load.inrushLasts(), load.feed());
    }

    private void addOutput(final int index, final Output output) {
        switch (output.family()) {
            case VALVE -> addValve(index, output);
            case MISTER -> trays.put(index, add(new WaterTray(index, output, slots)));
            case RELEASE -> {
                final Release release = add(new Release(index, output, slots));
                releases.put(index, release);
                props.put(index, release);
            }
            case CONTACT -> props.put(index, add(new BoughtProp(index, output, slots)));
            case STROBE -> strobes.put(index, add(new FlashLight(index, output, slots)));
            case AIR_SUPPLY, HEATER, PUMP, LAMP, FAN, SOUNDER -> {
                // Made before, or simply on while it has power.
            }
        }
    }

    private void addValve(final int index, final Output output) {
        final AirSection air = sectionOf(Optional.of(output.zone()), output.controller());
        if (CylinderForm.isToldBy(output.facts())) {
            final CylinderProp prop = add(new CylinderProp(index, output, air, slots));
            cylinders.put(index, prop);
            props.put(index, prop);
            air.feeds(prop);
        } else if (Nozzle.isToldBy(output.facts())) {
            air.feeds(add(new Nozzle(index, output, air, slots)));
        } else if (Stroke.isToldBy(output.facts())) {
            props.put(index, add(new Stroke(index, output, air, slots)));
        } else {
            add(new Jet(index, output, air, slots));
        }
    }

    private void addInput(final int index, final Input input) {
        switch (input.family()) {
            case MOTION -> {
                final MotionSensor sensor = add(new MotionSensor(index, input, wind, seed, slots));
                motions.add(sensor);
                fog.feltBy(sensor, input.sees().field().map(field -> Line.of(field.at())));
            }
            case PRESSURE -> add(new PressureSwitch(index, input, sectionFor(input)));
            case LEVEL ->
                named(input.facts().text(Fact.OF))
                        .flatMap(this::tray)
                        .ifPresent(tray -> add(new Signal(index, tray::isEnough)));
            case READY ->
                named(input.facts().text(Fact.OF))
                        .flatMap(this::heater)
                        .ifPresent(block -> add(new Signal(index, block::isReady)));
            case RAIN -> add(new RainSensor(index, seed));
            case BUTTON ->
                // the contact that a hung release presses; every other button follows a hand at once
                hungBy(input).ifPresent(release -> add(new Signal(index, release::isHung)));
            case BEAM, KEY, STOP_LOOP -> {
                // Beams are added last, after all that can send fog; the others follow a hand at once.
            }
        }
    }

    /** The hoses of the air supply that a pressure switch names, or those that are nearest to it. */
    private AirSection sectionFor(final Input input) {
        final Optional<String> named = input.facts().text(Fact.OF);
        for (int i = 0; i < supplies.size(); i++) {
            if (named.isPresent() && named.get().equals(supplies.get(i).name())) {
                return sections.get(i);
            }
        }
        return sectionOf(input.zone(), String.join(" ", input.controllers()));
    }

    /** The line that a valve or an air supply belongs to. */
    AirSection line(final int output) {
        final Output of = rig.outputs().get(output);
        final int supply = supplies.indexOf(of);
        return supply >= 0 ? sections.get(supply) : sectionOf(Optional.of(of.zone()), of.controller());
    }

    /** The hoses of the same zone, else of the same controller, else the first. */
    private AirSection sectionOf(final Optional<String> zone, final String controller) {
        for (int i = 0; i < supplies.size(); i++) {
            if (zone.isPresent() && zone.get().equals(supplies.get(i).zone())) {
                return sections.get(i);
            }
        }
        for (int i = 0; i < supplies.size(); i++) {
            if (supplies.get(i).controller().equals(controller)) {
                return sections.get(i);
            }
        }
        return sections.get(0);
    }

    private Optional<Integer> named(final Optional<String> name) {
        for (int i = 0; i < rig.outputs().size(); i++) {
            if (name.isPresent() && name.get().equals(rig.outputs().get(i).name())) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }
}
