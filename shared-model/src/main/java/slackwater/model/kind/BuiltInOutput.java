package slackwater.model.kind;

import java.util.List;
import slackwater.model.quantity.Dimension;

/** The kinds of output that come with the project, one for every family. */
// The checker does not know that List.of is immutable.
@SuppressWarnings("ImmutableEnumChecker")
public enum BuiltInOutput implements OutputKind {
    VALVE(
            "valve",
            Family.VALVE,
            Key.quantity("bore", Dimension.LENGTH, "inner diameter of the cylinder that it feeds"),
            travel(),
            movingMass(),
            Key.duration("strokes-in", "from energising to the end of the stroke"),
            Key.duration("returns-in", "from de-energising to the end of the return"),
            Key.quantity("air-per-stroke", Dimension.VOLUME, "free air that one stroke or one burst uses"),
            Key.quantity("rod", Dimension.LENGTH, "diameter of the cylinder's rod"),
            Key.quantity("pressure", Dimension.PRESSURE, "gauge pressure of a regulator of its own"),
            nominalFlow(),
            Key.quantity("critical-ratio", Dimension.RATIO, "pressure ratio below which its flow is choked"),
            Key.quantity("throttle", Dimension.VOLUME_FLOW, "nominal flow of the throttle on its exhaust"),
            Key.quantity("nozzle", Dimension.LENGTH, "diameter of the hole that it blows through"),
            Key.quantity("hose", Dimension.LENGTH, "length of the hose from the valve"),
            Key.quantity("hose-bore", Dimension.LENGTH, "inner diameter of that hose"),
            Key.quantity("spring", Dimension.FORCE, "force of the spring that returns it"),
            Key.quantity("friction", Dimension.FORCE, "force of seals and hinges"),
            Key.of("lifts", Key.Type.FLAG, "its stroke lifts what it moves"),
            Key.duration("opens-in", "from power to the open valve"),
            Key.duration("closes-in", "from the loss of power to the exhausting valve")),
    AIR_SUPPLY(
            "air-supply",
            Family.AIR_SUPPLY,
            nominalFlow(),
            Key.quantity("exhaust", Dimension.VOLUME_FLOW, "nominal flow of its exhaust"),
            Key.quantity("line", Dimension.VOLUME, "volume of the hoses behind it")),
    PUMP(
            "pump",
            Family.PUMP,
            Key.of("heated-by", Key.Type.OUTPUT_NAME, "the heater that must be hot before it pumps"),
            Key.quantity("flow", Dimension.MASS_FLOW, "fluid that it pumps"),
            holds("fluid in its bottle when full"),
            Key.quantity("glycol", Dimension.RATIO, "share of glycol in its fluid, by mass"),
            Key.of("chilled-by", Key.Type.TEXT, "ice or dry-ice, where its fog is chilled"),
            Key.quantity("chilled-to", Dimension.TEMPERATURE, "temperature of the fog that leaves the chiller"),
            air("air that its fog is mixed into")),
    HEATER(
            "heater",
            Family.HEATER,
            Key.duration("warms-in", "from cold to ready"),
            Key.quantity("power", Dimension.POWER, "what it heats with"),
            Key.quantity("block", Dimension.MASS, "mass of its block, of aluminium"),
            Key.quantity("thermostat", Dimension.TEMPERATURE, "temperature at which its own thermostat stops it"),
            Key.of("cut-out", Key.Type.TEXT, "what ends its heating without the controller")
                    .required()),
    STROBE(
            "strobe",
            Family.STROBE,
            Key.of("one-flash-per-pulse", Key.Type.FLAG, "it flashes once each time it is energised"),
            Key.quantity("flash-rate", Dimension.FREQUENCY, "it flashes by itself so often while energised")),
    LAMP("lamp", Family.LAMP),
    FAN("fan", Family.FAN, Key.duration("after-run", "how long it runs on after its demand"), air("air that it moves")),
    MISTER(
            "mister",
            Family.MISTER,
            Key.quantity("uses", Dimension.VOLUME_FLOW, "water that it uses while energised"),
            holds("water in its tray when full"),
            Key.of("discs", Key.Type.COUNT, "ultrasonic discs in its tray"),
            air("air that carries its mist away")),
    RELEASE("release", Family.RELEASE, movingMass(), travel()),
    SOUNDER("sounder", Family.SOUNDER),
    CONTACT(
            "contact",
            Family.CONTACT,
            Key.duration("run-time", "how long the bought prop moves after one pulse")
                    .required(),
            movingMass(),
            travel());

    private final String word;
    private final Family family;
    private final List<Key> keys;

    BuiltInOutput(final String word, final Family family, final Key... keys) {
        this.word = word;
        this.family = family;
        this.keys = List.of(keys);
    }

    private static Key travel() {
        return Key.quantity("travel", Dimension.LENGTH, "how far the moving part goes");
    }

    private static Key nominalFlow() {
        return Key.quantity("flow", Dimension.VOLUME_FLOW, "nominal flow of the valve, from 6 to 5 bar gauge");
    }

    private static Key holds(final String meaning) {
        return Key.quantity("holds", Dimension.VOLUME, meaning);
    }

    private static Key air(final String meaning) {
        return Key.quantity("air", Dimension.VOLUME_FLOW, meaning);
    }

    private static Key movingMass() {
        return Key.quantity("moving-mass", Dimension.MASS, "mass of everything that moves");
    }

    @Override
    public String word() {
        return word;
    }

    @Override
    public Family family() {
        return family;
    }

    @Override
    public List<Key> keys() {
        return keys;
    }
}
