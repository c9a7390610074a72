package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import slackwater.controller.app.Programs;

/** The whole program in this process, as a person would type it; what it says is kept apart by stream. */
final class Cli {
    private static final Path RIGS = Path.of("..", "rigs");

    private Cli() {}

    /** What a command left behind. */
    record Outcome(int exitCode, String out, String err) {

        /** What was given is wrong: said on stderr, in words, and nothing was started. */
        Outcome isRefused() {
            assertThat(exitCode).as("exit code, with: %s", err).isEqualTo(2);
            assertThat(out).isEmpty();
            return speaksPlainly();
        }

        /** Nothing that only a programmer could read. */
        Outcome speaksPlainly() {
            assertThat(err).isNotBlank().doesNotContain("at slackwater.", "Exception", "should not have happened");
            return this;
        }

        Outcome isGood() {
            assertThat(exitCode).as("exit code, with: %s%s", out, err).isZero();
            return this;
        }
    }

    static Outcome run(final Object... arguments) {
        final StringWriter out = new StringWriter();
        final StringWriter err = new StringWriter();
        final CommandLine program = Slackwater.program()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        final String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = String.valueOf(arguments[i]);
        }
        final int exitCode = Programs.run(program, words);
        return new Outcome(exitCode, out.toString(), err.toString());
    }

    /** One of the rigs that come with the project. */
    static Path example(final String name) {
        return RIGS.resolve(name);
    }

    /** A rig of one's own, in a folder that is made. */
    static Path rig(final Path folder, final String rig, final String show) throws IOException {
        Files.createDirectories(folder.resolve("shows"));
        Files.writeString(folder.resolve("rig.toml"), rig);
        Files.writeString(folder.resolve("shows").resolve("first.toml"), show);
        return folder;
    }
}
