package slackwater.model.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import slackwater.model.finding.Position;
import slackwater.model.finding.Where;

/**
 * Where everything was written. A key may be a path into its value: {@code hold-up.pin}, {@code outputs[1]},
 * {@code steps[2].for}; the keys of the file itself, outside every table, belong to the table with the empty name.
 */
final class Places implements Where {
    private final Map<String, SourceFile> files = new LinkedHashMap<>();
    private final Map<String, Entry> byPath = new LinkedHashMap<>();
    private final Map<String, String> originals = new LinkedHashMap<>();

    private record Entry(SourceFile file, TomlPosition from, boolean isElement) {
        Position key() {
            return isElement ? Spot.element(file, from) : Spot.key(file, from);
        }

        Position value() {
            return isElement ? Spot.element(file, from) : Spot.valueOfKey(file, from);
        }
    }

    /** A key's path below a table's. */
    static String path(final String table, final String key) {
        return table.isEmpty() ? key : table + "." + key;
    }

    void addFile(final SourceFile file) {
        files.put(file.name(), file);
    }

    /** Notes the places of all that a file holds; what an earlier file has under the same name stays. */
    void addAll(final SourceFile file, final TomlTable root) {
        addTable(file, root, "");
    }

    /** Says that a mirror made a table out of another. */
    void addMirrored(final String table, final String original) {
        originals.putIfAbsent(table, original);
    }

    int fileCount() {
        return files.size();
    }

    @Override
    public Optional<Position> value(final String table, final String key) {
        final Optional<Position> value = entry(table, key).map(Entry::value);
        return value.isPresent() ? value : table(table);
    }

    /** A key itself, to underline one that should not be there. */
    Optional<Position> key(final String table, final String key) {
        final Optional<Position> found = entry(table, key).map(Entry::key);
        return found.isPresent() ? found : table(table);
    }

    @Override
    public Optional<Position> table(final String table) {
        return Optional.ofNullable(byPath.get(originalOf(table))).map(Entry::key);
    }

    @Override
    public String lineText(final Position position) {
        final SourceFile file = files.get(position.file());
        return file == null ? "" : file.line(position.line());
    }

    private Optional<Entry> entry(final String table, final String key) {
        return Optional.ofNullable(byPath.get(path(originalOf(table), key)));
    }

    private String originalOf(final String table) {
        return byPath.containsKey(table) ? table : originals.getOrDefault(table, table);
    }

    private void addTable(final SourceFile file, final TomlTable table, final String path) {
        for (final String key : table.keySet()) {
            final List<String> only = List.of(key);
            final TomlPosition from = table.inputPositionOf(only);
            if (from != null) {
                byPath.putIfAbsent(path(path, key), new Entry(file, from, false));
            }
            addValue(file, table.get(only), path(path, key));
        }
    }

    private void addArray(final SourceFile file, final TomlArray array, final String path) {
        for (int i = 0; i < array.size(); i++) {
            final String element = path + "[" + i + "]";
            byPath.putIfAbsent(element, new Entry(file, array.inputPositionOf(i), true));
            addValue(file, array.get(i), element);
        }
    }

    private void addValue(final SourceFile file, final Object value, final String path) {
        if (value instanceof TomlTable table) {
            addTable(file, table, path);
        } else if (value instanceof TomlArray array) {
            addArray(file, array, path);
        }
    }
}
