package slackwater.model.file;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.tomlj.TomlTable;
import slackwater.model.finding.Findings.Words;
import slackwater.model.finding.Nearest;

/** The tables of one file: those that stand once, and groups of tables with a name each. */
final class Groups {
    private static final Pattern NAME = Pattern.compile("[a-z0-9-]+");

    private final Context context;
    private final TomlTable root;

    Groups(final Context context, final TomlTable root) {
        this.context = context;
        this.root = root;
    }

    /** Reads every {@code [group.NAME]} in the order of the file. */
    void each(final String group, final BiConsumer<String, TableReader> read) {
        if (root.get(List.of(group)) instanceof TomlTable tables) {
            for (final String name : tables.keySet()) {
                final String path = Places.path(group, name);
                if (tables.get(List.of(name)) instanceof TomlTable table) {
                    checkName(name, path);
                    read.accept(name, new TableReader(context, table, path));
                } else {
                    context.error(
                            "no-name",
                            context.places().key(group, name),
                            new Words(
                                    "\"" + name + "\" stands in [" + group + "], which has no name",
                                    "cues, interlocks and people speak of it by its name",
                                    "write [" + group + ".NAME] above it"));
                }
            }
        }
    }

    /** A table that stands once. */
    Optional<TableReader> only(final String name) {
        return root.get(List.of(name)) instanceof TomlTable table
                ? Optional.of(new TableReader(context, table, name))
                : Optional.empty();
    }

    /** Reports tables and keys that this file does not have. */
    void finish(final String file, final List<String> tables, final List<String> keys) {
        for (final String key : root.keySet()) {
            final boolean isTable = root.get(List.of(key)) instanceof TomlTable;
            final boolean isKnownTable = tables.contains(key);
            if (isTable ? !isKnownTable : !keys.contains(key)) {
                final List<String> known = isTable ? tables : keys;
                final String what = isTable ? "table" : "key";
                final String message = isKnownTable
                        ? "\"" + key + "\" is not a table"
                        : file + " knows no " + what + " \"" + key + "\"";
                final String fix = isKnownTable
                        ? "write [" + key + "] or [" + key + ".NAME], and its keys below it"
                        : Nearest.of(key, known)
                                .map(near -> "did you mean \"" + near + "\"?")
                                .orElse(Context.listed("it may have: ", known, "leave it out"));
                context.error(
                        isKnownTable ? "wrong-type" : "unknown-" + what,
                        context.places().key("", key),
                        new Words(message, "what nobody reads would be a limit that nobody keeps", fix));
            }
        }
    }

    private void checkName(final String name, final String path) {
        if (!NAME.matcher(name).matches()) {
            context.error(
                    "bad-name",
                    context.places().table(path),
                    new Words(
                            "the name \"" + name + "\" has letters that names do not have",
                            "names stand in files, on labels and in addresses",
                            "use a to z, 0 to 9 and hyphens"));
        }
    }
}
