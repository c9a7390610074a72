package slackwater.model.file;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** A first look into a file that nobody has checked yet: whatever has the wrong type is as if it were not there. */
final class Raw {
    private Raw() {}

    /** Names of the tables within a group, in the order of the file. */
    static List<String> tables(final TomlTable root, final String group) {
        return table(root, group)
                .map(tables -> tables.keySet().stream()
                        .filter(name -> tables.get(List.of(name)) instanceof TomlTable)
                        .toList())
                .orElse(List.of());
    }

    static Optional<TomlTable> table(final TomlTable in, final String key) {
        return in.get(List.of(key)) instanceof TomlTable table ? Optional.of(table) : Optional.empty();
    }

    static Optional<String> text(final TomlTable root, final String group, final String name, final String key) {
        return table(root, group)
                .flatMap(tables -> table(tables, name))
                .flatMap(
                        found -> found.get(List.of(key)) instanceof String text ? Optional.of(text) : Optional.empty());
    }

    static List<String> texts(final TomlTable root, final String group, final String name, final String key) {
        return table(root, group)
                .flatMap(tables -> table(tables, name))
                .map(found -> found.get(List.of(key)) instanceof TomlArray array ? texts(array) : List.<String>of())
                .orElse(List.of());
    }

    private static List<String> texts(final TomlArray array) {
        return IntStream.range(0, array.size())
                .mapToObj(array::get)
                .filter(String.class::isInstance)
                .map(String.class::cast)
                .toList();
    }
}
