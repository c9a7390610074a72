package slackwater.model.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slackwater.model.finding.FindingsPrinter;

/** Rig folders for tests. */
final class Folders {
    private static final Path RESOURCES = Path.of("src", "test", "resources", "reader");

    private Folders() {}

    static String resource(final String name) {
        try {
            return Files.readString(RESOURCES.resolve(name));
        } catch (final IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** A folder with a rig and with the show {@code first}. */
    static Path with(final Path folder, final String rig, final String show) {
        write(folder.resolve("rig.toml"), rig.getBytes(StandardCharsets.UTF_8));
        write(folder.resolve("shows").resolve("first.toml"), show.getBytes(StandardCharsets.UTF_8));
        return folder;
    }

    static void write(final Path file, final byte[] bytes) {
        try {
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
        } catch (final IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static Reading read(final Path folder) {
        return RigFolder.read(folder, Optional.empty(), Folders.class.getClassLoader());
    }

    /** What the printer says, with the folder called RIG. */
    static String print(final Path folder, final Reading reading) {
        return FindingsPrinter.text(reading.findings(), reading.filesRead()).replace(folder.toString(), "RIG");
    }
}
