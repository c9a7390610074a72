package slackwater.model.kind;

import java.util.List;

/** A kind of input, found by the standard service loader. */
public interface InputKind {
    /** The word after {@code kind =} in the rig file, lower case with hyphens. */
    String word();

    InputFamily family();

    /** Keys beyond those every input has. */
    default List<Key> keys() {
        return List.of();
    }
}
