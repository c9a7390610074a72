package slackwater.model.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tomlj.TomlTable;
import slackwater.model.Arming;
import slackwater.model.Circuit;
import slackwater.model.Controller;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.LedgerRules;
import slackwater.model.Output;
import slackwater.model.Place;
import slackwater.model.Rig;
import slackwater.model.Supply;
import slackwater.model.Zone;
import slackwater.model.finding.Findings.Words;

/** Reads rig.toml once it is TOML. What it makes is a rig only when no error was found. */
final class RigReader {
    private static final List<String> KEYS = List.of("name", "scan", "people");
    private static final List<String> TABLES = Stream.of(
                    List.of(
                            "place",
                            "way",
                            "walkers",
                            "air",
                            "weather",
                            "circuit",
                            "supply",
                            "arming",
                            "ledger",
                            "controller",
                            "zone",
                            "mirror",
                            "input",
                            "output"),
                    InterlockTables.GROUPS)
            .flatMap(List::stream)
            .toList();
    private static final Duration USUAL_SCAN = Duration.ofMillis(10);
    private static final Duration SHORTEST_SCAN = Duration.ofMillis(5);
    private static final Duration LONGEST_SCAN = Duration.ofMillis(50);

    private final Context context;
    private final TomlTable root;
    private final Groups groups;
    private final List<Mirror> mirrors = new ArrayList<>();

    RigReader(final Context context, final TomlTable root) {
        this.context = context;
        this.root = root;
        this.groups = new Groups(context, root);
    }

    /** Reads everything; the folder's name is the rig's unless it says its own. */
    Rig read(final String folderName) {
        final TableReader top = new TableReader(context, root, "");
        final String name = top.text("name").orElse(folderName);
        final Duration scan = scan(top);
        final List<String> people = top.texts("people");
        final List<Controller> controllers = controllers();
        groups.each("mirror", (mirror, reader) -> mirrors.add(MirrorTable.read(root, mirror, reader)));
        final List<Zone> zones = zones();
        final List<Input> inputs = inputs();
        final List<Output> outputs = outputs();
        checkNamesOnce(inputs, outputs);
        final List<Interlock> interlocks = interlocks(outputs);
        final Optional<Place> place = groups.only("place").flatMap(SurroundingsTables::place);
        final Rig.Surroundings surroundings = surroundings();
        final Arming arming =
                groups.only("arming").map(SurroundingsTables::arming).orElse(Arming.USUAL);
        final LedgerRules ledger =
                groups.only("ledger").map(SurroundingsTables::ledger).orElse(LedgerRules.USUAL);
        groups.finish("rig.toml", TABLES, KEYS);
        return new Rig(
                name,
                scan,
                place,
                controllers,
                zones,
                inputs,
                outputs,
                interlocks,
                arming,
                people,
                surroundings,
                ledger);
    }

    private Rig.Surroundings surroundings() {
        final List<Circuit> circuits = new ArrayList<>();
        groups.each("circuit", (name, reader) -> circuits.add(SurroundingsTables.circuit(name, reader)));
        final List<Supply> supplies = new ArrayList<>();
        groups.each("supply", (name, reader) -> supplies.add(SurroundingsTables.supply(name, reader)));
        return new Rig.Surroundings(
                groups.only("way").flatMap(SurroundingsTables::way),
                groups.only("air").flatMap(SurroundingsTables::air),
                groups.only("walkers").flatMap(SurroundingsTables::walkers),
                groups.only("weather").flatMap(SurroundingsTables::weather),
                circuits,
                supplies);
    }

    List<Mirror> mirrors() {
        return mirrors;
    }

    private Duration scan(final TableReader top) {
        final Duration scan = top.duration("scan").orElse(USUAL_SCAN);
        if (scan.compareTo(SHORTEST_SCAN) < 0 || scan.compareTo(LONGEST_SCAN) > 0) {
            top.error(
                    "out-of-range",
                    "scan",
                    new Words(
                            "the scan is not between 5 ms and 50 ms",
                            "a shorter one cannot be kept, a longer one sees a hand too late",
                            "write scan = \"10 ms\", or leave it out"));
        }
        return scan;
    }

    private List<Controller> controllers() {
        final List<Controller> controllers = new ArrayList<>();
        groups.each(
                "controller",
                (name, reader) -> ControllerTable.read(name, reader).ifPresent(controllers::add));
        if (context.names().controllers().isEmpty()) {
            context.error(
                    "no-controller",
                    Optional.empty(),
                    new Words(
                            "the rig has no controller",
                            "inputs and outputs are wired to a computer",
                            "add [controller.NAME] with board = \"pi-4\""));
        }
        return controllers;
    }

    private List<Zone> zones() {
        final List<Zone> declared = new ArrayList<>();
        groups.each("zone", (name, reader) -> declared.add(SurroundingsTables.zone(name, reader)));
        final List<Zone> zones = new ArrayList<>();
        for (final String name : context.names().zones()) {
            zones.add(zone(name, declared));
        }
        return zones;
    }

    /** A zone that a mirror makes is as its original, unless it has a table of its own. */
    private Zone zone(final String name, final List<Zone> declared) {
        final Optional<String> original = mirrors.stream()
                .filter(mirror -> mirror.zone().equals(name))
                .map(mirror -> mirror.names().of())
                .findFirst();
        original.ifPresent(of -> context.places().addMirrored("zone." + name, "mirror." + name));
        return named(name, declared)
                .or(() -> original.flatMap(of -> named(of, declared))
                        .map(zone -> new Zone(name, zone.whenAlone(), zone.hasHardWiredStop())))
                .orElse(new Zone(name, Zone.WhenAlone.REST, false));
    }

    private static Optional<Zone> named(final String name, final List<Zone> zones) {
        return zones.stream().filter(zone -> zone.name().equals(name)).findFirst();
    }

    private List<Input> inputs() {
        final List<Input> written = new ArrayList<>();
        groups.each("input", (name, reader) -> InputTable.read(name, reader).ifPresent(written::add));
        final List<Input> all = new ArrayList<>(written);
        mirrors.forEach(mirror -> all.addAll(new Mirroring(context, mirror).inputs(written)));
        return all;
    }

    private List<Output> outputs() {
        final List<Output> written = new ArrayList<>();
        groups.each("output", (name, reader) -> OutputTable.read(name, reader).ifPresent(written::add));
        final List<Output> all = new ArrayList<>(written);
        mirrors.forEach(mirror -> all.addAll(new Mirroring(context, mirror).outputs(written)));
        return all;
    }

    private void checkNamesOnce(final List<Input> inputs, final List<Output> outputs) {
        final List<String> seen = new ArrayList<>();
        final List<String> tables = new ArrayList<>();
        inputs.forEach(input -> tables.add("input." + input.name()));
        outputs.forEach(output -> tables.add("output." + output.name()));
        for (final String table : tables) {
            final String name = table.substring(table.indexOf('.') + 1);
            if (seen.contains(name)) {
                final String other = context.places()
                        .table("input." + name)
                        .map(at -> " at " + at.file() + ":" + at.line() + ":" + at.column())
                        .orElse("");
                context.error(
                        "name-taken",
                        context.places().table(table),
                        new Words(
                                "the name \"" + name + "\" is already taken",
                                "another input or output has it" + other + ", and a report would not tell which",
                                "give one of the two another name"));
            }
            seen.add(name);
        }
    }

    private List<Interlock> interlocks(final List<Output> outputs) {
        final InterlockTables tables = new InterlockTables(outputs);
        final List<Interlock> all = new ArrayList<>();
        for (final String group : InterlockTables.GROUPS) {
            final List<Interlock> written = new ArrayList<>();
            groups.each(group, (name, reader) -> written.add(tables.read(group, name, reader)));
            all.addAll(written);
            mirrors.forEach(mirror -> all.addAll(new Mirroring(context, mirror).interlocks(group, written, outputs)));
        }
        return all;
    }
}
