package slackwater.controller.plan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;

/** A rig and its show as a person writes them, read by the project's own reader. */
public record RigText(Rig rig, Show show) {

    /** Reads both texts; a mistake in one is a mistake of the test and throws with every finding. */
    public static RigText of(final String rig, final String show) {
        try {
            final Path folder = Files.createTempDirectory("rig");
            final Path shows = Files.createDirectory(folder.resolve("shows"));
            final Path rigFile = Files.writeString(folder.resolve("rig.toml"), rig, StandardCharsets.UTF_8);
            final Path showFile = Files.writeString(shows.resolve("show.toml"), show, StandardCharsets.UTF_8);
            final Reading reading = RigFolder.read(folder, Optional.empty(), RigText.class.getClassLoader());
            Files.delete(showFile);
            Files.delete(rigFile);
            Files.delete(shows);
            Files.delete(folder);
            if (reading.rig().isEmpty() || reading.show().isEmpty()) {
                throw new IllegalArgumentException(reading.findings().toString());
            }
            return new RigText(reading.rig().get(), reading.show().get());
        } catch (final IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The tables that a rig has before its inputs and outputs: one controller, no warning before it is armed. */
    public static String yard(final String tables) {
        return """
                [controller.yard]
                board = "pi-4"
                [arming]
                warning = "0 s"
                """ + tables;
    }
}
