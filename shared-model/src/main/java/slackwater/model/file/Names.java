package slackwater.model.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tomlj.TomlTable;

/** What may be named, collected before anything is read, so that a table may speak of one that stands below it. */
record Names(
        List<String> controllers,
        List<String> zones,
        List<String> inputs,
        List<String> outputs,
        List<String> circuits,
        List<String> supplies) {
    private static final String ONLY_ZONE = "yard";

    Names {
        controllers = List.copyOf(controllers);
        zones = List.copyOf(zones);
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
        circuits = List.copyOf(circuits);
        supplies = List.copyOf(supplies);
    }

    /**
     * Zones are those that have a table and those that a mirror makes. Where no zone has a table, those that inputs and
     * outputs name; where none is named at all, one zone is implied.
     */
    static Names of(final TomlTable root) {
        final Set<String> inputs = new LinkedHashSet<>(keys(root, "input"));
        final Set<String> outputs = new LinkedHashSet<>(keys(root, "output"));
        for (final String mirror : keys(root, "mirror")) {
            final MirrorNames names = MirrorNames.of(root, mirror);
            inputs.addAll(names.mirrored("input").values());
            outputs.addAll(names.mirrored("output").values());
        }
        return new Names(
                keys(root, "controller"),
                new ArrayList<>(zones(root)),
                new ArrayList<>(inputs),
                new ArrayList<>(outputs),
                new ArrayList<>(keys(root, "circuit")),
                new ArrayList<>(keys(root, "supply")));
    }

    List<String> of(final Context.Thing thing) {
        return switch (thing) {
            case INPUT -> inputs;
            case OUTPUT -> outputs;
            case ZONE -> zones;
            case CONTROLLER -> controllers;
            case CIRCUIT -> circuits;
            case SUPPLY -> Stream.concat(supplies.stream(), circuits.stream()).toList();
        };
    }

    private static Set<String> zones(final TomlTable root) {
        final Set<String> zones = new LinkedHashSet<>(keys(root, "zone"));
        if (zones.isEmpty()) {
            for (final String group : List.of("input", "output")) {
                for (final String name : keys(root, group)) {
                    Raw.text(root, group, name, "zone").ifPresent(zones::add);
                }
            }
        }
        zones.addAll(keys(root, "mirror"));
        if (zones.isEmpty()) {
            zones.add(ONLY_ZONE);
        }
        return zones;
    }

    private static List<String> keys(final TomlTable root, final String group) {
        return Raw.tables(root, group);
    }
}
