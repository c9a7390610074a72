package slackwater.model.kind;

import java.util.List;
import slackwater.model.quantity.Dimension;

/** The kinds of input that come with the project, one for every family. */
// The checker does not know that List.of is immutable.
@SuppressWarnings("ImmutableEnumChecker")
public enum BuiltInInput implements InputKind {
    MOTION(
            "motion",
            InputFamily.MOTION,
            Key.duration("pulse", "how long its output stays active after it last saw somebody"),
            Key.duration("block", "how long it is blind after its pulse"),
            Key.of("one-pulse", Key.Type.FLAG, "somebody seen during its pulse does not lengthen it"),
            Key.of("false-an-hour", Key.Type.COUNT, "how often an hour wind and warm air set it off")),
    BEAM(
            "beam",
            InputFamily.BEAM,
            Key.quantity("distance", Dimension.LENGTH, "from the beam to where the guarded part moves"),
            Key.duration("responds-in", "from the beam's interruption to the change of its output"),
            Key.quantity("resolution", Dimension.LENGTH, "the thinnest thing that a curtain surely sees")),
    PRESSURE(
            "pressure",
            InputFamily.PRESSURE,
            Key.quantity("set-point", Dimension.PRESSURE, "active above this gauge pressure"),
            of()),
    LEVEL("level", InputFamily.LEVEL, of()),
    READY("ready", InputFamily.READY, of()),
    BUTTON("button", InputFamily.BUTTON, of()),
    KEY("key", InputFamily.KEY, of()),
    RAIN("rain", InputFamily.RAIN),
    STOP_LOOP("stop-loop", InputFamily.STOP_LOOP);

    private final String word;
    private final InputFamily family;
    private final List<Key> keys;

    BuiltInInput(final String word, final InputFamily family, final Key... keys) {
        this.word = word;
        this.family = family;
        this.keys = List.of(keys);
    }

    private static Key of() {
        return Key.of("of", Key.Type.OUTPUT_NAME, "the output that it tells about");
    }

    @Override
    public String word() {
        return word;
    }

    @Override
    public InputFamily family() {
        return family;
    }

    @Override
    public List<Key> keys() {
        return keys;
    }
}
