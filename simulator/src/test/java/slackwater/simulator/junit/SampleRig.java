package slackwater.simulator.junit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slackwater.controller.cue.CueCode;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;
import slackwater.model.kind.OutputKind;

/** A small rig with one output of a kind from outside, written into a folder and read back. */
final class SampleRig {
    private static final String RIG = """
            [controller.porch]
            board = "pi-4"
            [input.path]
            kind = "motion"
            [output.light]
            kind = "KIND"
            unguarded = "touch-safe"
            """;
    private static final String STEPS = "steps = [ { energise = \"light\", for = \"2 s\" } ]";
    private static final String CODE = "code = \"sample-cue\"";
    private static final String SHOW = """
            [cue.greet]
            starts = "path"
            hold-off = "3 s"
            PLAYS
            """;

    private SampleRig() {}

    /** The contract of a kind in a rig whose cue has steps. */
    static KindContract with(final Path folder, final OutputKind kind) {
        return contract(folder, kind.word(), Optional.of(kind), List.of());
    }

    /** The contract of a cue in code with a lamp of our own. */
    static KindContract with(final Path folder, final CueCode code) {
        return contract(folder, "lamp", Optional.empty(), List.of(code));
    }

    /** The contract of a rig that uses nothing from outside. */
    static KindContract plain(final Path folder) {
        return contract(folder, "lamp", Optional.empty(), List.of());
    }

    private static KindContract contract(
            final Path folder, final String word, final Optional<OutputKind> kind, final List<CueCode> codes) {
        try {
            Files.createDirectories(folder.resolve("shows"));
            Files.writeString(folder.resolve("rig.toml"), RIG.replace("KIND", word));
            Files.writeString(folder.resolve("shows/s.toml"), SHOW.replace("PLAYS", codes.isEmpty() ? STEPS : CODE));
            final Path services = Files.createDirectories(folder.resolve("services/META-INF/services"));
            Files.writeString(
                    services.resolve(OutputKind.class.getName()),
                    kind.map(each -> each.getClass().getName()).orElse(""));
            final URL found = folder.resolve("services").toUri().toURL();
            try (URLClassLoader loader = new URLClassLoader(new URL[] {found}, SampleRig.class.getClassLoader())) {
                final Reading reading = RigFolder.read(folder, Optional.empty(), loader);
                return KindContract.of(
                        reading.rig().orElseThrow(() -> new AssertionError(reading.findings())),
                        reading.show().orElseThrow(),
                        codes);
            }
        } catch (final IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
