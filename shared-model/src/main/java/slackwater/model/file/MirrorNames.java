package slackwater.model.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tomlj.TomlTable;

/**
 * How a mirror names what it makes: {@code north-clam} of zone north becomes {@code south-clam}.
 *
 * @param of the zone that is repeated
 * @param zone the zone that is made
 * @param without names that are not repeated
 */
record MirrorNames(TomlTable root, String of, String zone, List<String> without) {
    MirrorNames {
        without = List.copyOf(without);
    }

    static MirrorNames of(final TomlTable root, final String mirror) {
        final String of = Raw.text(root, "mirror", mirror, "of").orElse("");
        return new MirrorNames(root, of, mirror, Raw.texts(root, "mirror", mirror, "without"));
    }

    /** New names by old ones, of all inputs or outputs in the zone that are repeated. A stop loop has no zone. */
    Map<String, String> mirrored(final String group) {
        final Map<String, String> mirrored = new LinkedHashMap<>();
        for (final String name : Raw.tables(root, group)) {
            final boolean isThere =
                    Raw.text(root, group, name, "zone").orElse("").equals(of);
            if (isThere && !of.isEmpty() && hasPrefix(name) && !without.contains(name)) {
                mirrored.put(name, renamed(name));
            }
        }
        return mirrored;
    }

    boolean hasPrefix(final String name) {
        return name.startsWith(of + "-");
    }

    String renamed(final String name) {
        return zone + name.substring(of.length());
    }
}
