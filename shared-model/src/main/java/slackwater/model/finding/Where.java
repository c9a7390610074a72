package slackwater.model.finding;

import java.util.Optional;

/**
 * Where in the files a part of the rig was written. Tables are named as in the file, such as {@code output.clam-lid}; a part
 * that a mirror made answers with the place of its original.
 */
public interface Where {
    /** The value of a key; the table's own heading where the key was left out; empty where there is no such table. */
    Optional<Position> value(String table, String key);

    /** The heading of a table. */
    Optional<Position> table(String table);

    /** The text of a line of that file, without its end. */
    String lineText(Position position);
}
