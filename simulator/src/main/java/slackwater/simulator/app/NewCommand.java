package slackwater.simulator.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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
            if (Files.exists(folder.resolve(RIG))) {
                return refuse(folder + " already holds a rig; name another folder", Exit.WRONG);
            }
            Files.createDirectories(folder.resolve("shows"));
            write(RIG);
            write(SHOW);
        } catch (final FileAlreadyExistsException taken) {
            return refuse(taken.getFile() + " exists already and is no folder; name another", Exit.WRONG);
        } catch (final IOException failed) {
            return refuse(
                    folder + " cannot be written (" + failed.getMessage() + "); name another folder", Exit.FELL_SHORT);
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

    private void write(final String file) throws IOException {
        Files.writeString(
                folder.resolve(file),
                template(file),
                StandardCharsets.UTF_8,
                java.nio.file.StandardOpenOption.CREATE_NEW);
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
