package slackwater.model.kind;

import java.util.Optional;
import slackwater.model.quantity.Dimension;

/**
 * A key that a table may have.
 *
 * @param name the key as written, lower case with hyphens
 * @param type what its value must be
 * @param dimension for a quantity, what it measures
 * @param isRequired whether leaving it out is an error
 * @param meaning one sentence for the person who writes the file
 */
public record Key(String name, Type type, Optional<Dimension> dimension, boolean isRequired, String meaning) {

    /** What a key's value may be. */
    public enum Type {
        DURATION,
        QUANTITY,
        COUNT,
        FLAG,
        TEXT,
        INPUT_NAME,
        OUTPUT_NAME
    }

    public static Key duration(final String name, final String meaning) {
        return new Key(name, Type.DURATION, Optional.of(Dimension.TIME), false, meaning);
    }

    public static Key quantity(final String name, final Dimension dimension, final String meaning) {
        return new Key(name, Type.QUANTITY, Optional.of(dimension), false, meaning);
    }

    public static Key of(final String name, final Type type, final String meaning) {
        return new Key(name, type, Optional.empty(), false, meaning);
    }

    /** The same key, but leaving it out is an error. */
    public Key required() {
        return new Key(name, type, dimension, true, meaning);
    }
}
