package slackwater.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Writes proposed pins into the text of a rig file: one new line below a table's heading, and nothing else is touched,
 * so that comments, order and line ends stay the person's own.
 */
public final class PinWriter {

    /**
     * What became of it.
     *
     * @param toml the text with the new lines
     * @param written what was written
     * @param left one sentence for each pin that the person has to write by hand
     */
    public record Written(String toml, List<Proposed> written, List<String> left) {
        public Written {
            written = List.copyOf(written);
            left = List.copyOf(left);
        }
    }

    /** A new line to be put in at a place of the text. */
    private record Insertion(int at, String line) {}

    private PinWriter() {}

    public static Written insert(final String toml, final List<Proposed> proposals) {
        final TomlTables tables = TomlTables.of(toml);
        final List<Insertion> insertions = new ArrayList<>();
        final List<Proposed> written = new ArrayList<>();
        final List<String> left = new ArrayList<>();
        for (final Proposed proposed : proposals) {
            final Optional<String> obstacle = obstacle(tables, proposed);
            if (obstacle.isPresent()) {
                left.add(obstacle.get());
                continue;
            }
            final TomlTables.Table table = tables.named(proposed.table()).orElseThrow();
            insertions.add(insertion(toml, table, proposed));
            written.add(proposed);
        }
        return new Written(apply(toml, insertions), written, left);
    }

    private static Optional<String> obstacle(final TomlTables tables, final Proposed proposed) {
        final String where = "[" + proposed.table() + "]";
        if (proposed.key() != Proposed.Key.PIN) {
            return Optional.of("Write " + proposed.asWritten() + " into " + where
                    + " yourself, beside what is there: it shares a line with other keys.");
        }
        final Optional<TomlTables.Table> table = tables.named(proposed.table());
        if (table.isEmpty()) {
            return Optional.of(where + " has no heading of its own in this file, as with a mirrored bank: "
                    + proposed.asWritten() + " was not written.");
        }
        return table.get().hasPin()
                ? Optional.of(where + " has a pin already: " + proposed.asWritten() + " was not written.")
                : Optional.empty();
    }

    private static Insertion insertion(final String toml, final TomlTables.Table table, final Proposed proposed) {
        final String line = table.indent() + proposed.asWritten();
        final boolean isLastLineUnended = table.bodyAt() == toml.length() && !toml.endsWith("\n");
        final String lineEnd = table.lineEnd();
        return new Insertion(table.bodyAt(), isLastLineUnended ? lineEnd + line : line + lineEnd);
    }

    private static String apply(final String toml, final List<Insertion> insertions) {
        final StringBuilder text = new StringBuilder(toml);
        insertions.stream()
                .sorted(Comparator.comparingInt(Insertion::at).reversed())
                .forEach(insertion -> text.insert(insertion.at(), insertion.line()));
        return text.toString();
    }
}
