package slackwater.model.kind;

import java.util.List;

/**
 * A kind of output, found by the standard service loader. One class: the word that the rig file uses, the family whose
 * safety rules apply, and the keys that the kind adds to an output's table.
 */
public interface OutputKind {
    /** The word after {@code kind =} in the rig file, lower case with hyphens. */
    String word();

    Family family();

    /** Keys beyond those every output has. */
    default List<Key> keys() {
        return List.of();
    }
}
