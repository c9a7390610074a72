package slackwater.simulator.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was changed from the sketch to the rig, read from both files as they are written. */
final class Edits {
    private static final String NONE = "none";

    /** A line to compare: where it stands in the one file and in the other. */
    private record Place(String word, String sketchTable, String rigTable, String key) {}

    private static final List<Place> PLACES = List.of(
            new Place("tank", "air", "air", "tank"),
            new Place("compressor", "air", "air", "delivers"),
            new Place("working pressure", "air", "air", "working"),
            new Place("breaker", "circuit.extension", "circuit.boathouse", "breaker"),
            new Place("time for the lid's way down", "output.lid", "output.north-clam-lid", "returns-in"),
            new Place("first sensor at", "input.path", "input.north-path-inner", "at"),
            new Place("hold-up relay", "controller.shed", "controller.north", "hold-up"));

    private Edits() {}

    /** One line for each change. */
    static List<String> between(final Path sketch, final Path rig) throws IOException {
        final List<String> before = Files.readAllLines(sketch.resolve("rig.toml"));
        final List<String> after = Files.readAllLines(rig.resolve("rig.toml"));
        final List<String> edits = new ArrayList<>();
        for (final Place place : PLACES) {
            final String was = value(before, place.sketchTable(), place.key()).orElse(NONE);
            final String is = value(after, place.rigTable(), place.key()).orElse(NONE);
            if (!was.equals(is)) {
                edits.add(place.word() + ": " + was + " -> " + is);
            }
        }
        return edits;
    }

    private static Optional<String> value(final List<String> lines, final String table, final String key) {
        boolean isThere = false;
        for (final String line : lines) {
            final String bare = line.replaceFirst("#.*", "").strip();
            if (bare.startsWith("[") && bare.endsWith("]") && !bare.contains("=")) {
                isThere = bare.equals("[" + table + "]");
            } else if (isThere && bare.startsWith(key + " =")) {
                return Optional.of(bare.substring(key.length() + 2).strip().replace("\"", ""));
            }
        }
        return Optional.empty();
    }
}
