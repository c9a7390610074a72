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
            Key.quantity("air-per-stroke", Dimension.VOLUME, "free air that one stroke or one burst uses")),
    AIR_SUPPLY("air-supply", Family.AIR_SUPPLY),
    PUMP(
            "pump",
            Family.PUMP,
            Key.of("heated-by", Key.Type.OUTPUT_NAME, "the heater that must be hot before it pumps"),
            Key.quantity("flow", Dimension.MASS_FLOW, "fluid that it pumps")),
    HEATER(
            "heater",
            Family.HEATER,
            Key.duration("warms-in", "from cold to ready"),
            Key.of("cut-out", Key.Type.TEXT, "what ends its heating without the controller")
                    .required()),
    STROBE(
            "strobe",
            Family.STROBE,
            Key.of("one-flash-per-pulse", Key.Type.FLAG, "it flashes once each time it is energised"),
            Key.quantity("flash-rate", Dimension.FREQUENCY, "it flashes by itself so often while energised")),
    LAMP("lamp", Family.LAMP),
    FAN("fan", Family.FAN, Key.duration("after-run", "how long it runs on after its demand")),
    MISTER(
            "mister",
            Family.MISTER,
            Key.quantity("uses", Dimension.VOLUME_FLOW, "water that it uses while energised"),
            Key.quantity("holds", Dimension.VOLUME, "water in its tray when full")),
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
