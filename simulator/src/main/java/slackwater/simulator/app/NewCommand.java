package slackwater.simulator.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.simulator.report.ReportFiles;

/** {@code new}: a first rig and show of twenty lines. */
@Command(
        name = "new",
        description = "Write a first rig and show of twenty lines into a new folder, ready to simulate.",
        footer = {"", "Example:", "  slackwater new my-yard", "  slackwater simulate my-yard"})
final class NewCommand implements Callable<Integer> {
    private static final String RIG = "rig.toml";
    private static final String SHOW = "shows/first.toml";

    @Parameters(paramLabel = "FOLDER", description = "A folder that does not exist yet, or is empty.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        try {
            final Optional<String> taken = taken();
            if (taken.isPresent()) {
                return refuse(taken.get(), Exit.WRONG);
            }
            Files.createDirectories(folder.resolve("shows"));
            write(RIG);
            write(SHOW);
        } catch (final IOException failed) {
            return refuse(
                    folder + " cannot be written: " + ReportFiles.reason(failed) + "; name another folder",
                    Exit.FELL_SHORT);
        }
        spec.commandLine()
                .getOut()
                .println(String.join(
                        System.lineSeparator(),
                        "Wrote " + folder.resolve(RIG) + " and " + folder.resolve(SHOW) + ".",
                        "Try next:",
                        "  slackwater check " + folder,
                        "  slackwater simulate " + folder,
                        "  slackwater wiring " + folder + " --propose-pins"));
        return Exit.GOOD;
    }

    /** Why nothing may be written there; empty where it may. */
    private Optional<String> taken() throws IOException {
        if (!Files.exists(folder)) {
            return Optional.empty();
        }
        if (!Files.isDirectory(folder)) {
            return Optional.of(folder + " is a file; name a folder");
        }
        if (Files.exists(folder.resolve(RIG))) {
            return Optional.of(folder + " already holds a rig; name another folder");
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().map(any -> folder + " is not empty; name another folder");
        }
    }

    private void write(final String file) throws IOException {
        Files.writeString(folder.resolve(file), template(file), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    }

    private static String template(final String file) {
        try (InputStream text = NewCommand.class.getResourceAsStream("first/" + file)) {
            if (text == null) {
                throw new IllegalStateException("the program lacks its own template " + file);
            }
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        } catch (final IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private int refuse(final String why, final int code) {
        spec.commandLine().getErr().println(why);
        return code;
    }
}
