package slackwater.controller.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code check}: every error and warning of a rig and its show. */
@Command(
        name = "check",
        description = "Report every error and warning in a rig and its show; nothing is started.",
        footer = {"", "Example:", "  slackwater check rigs/sea-cave", "", "Exit: 0 no errors, 2 otherwise."})
public final class CheckCommand implements Callable<Integer> {
    private static final int GOOD = 0;
    private static final int WRONG = 2;

    @Parameters(paramLabel = "RIG", description = "The rig's folder.")
    private Path folder;

    @Option(names = "--show", paramLabel = "NAME", description = "Which show, where there are several.")
    private @Nullable String show;

    @Option(names = "--json", description = "Print one JSON object and nothing else.")
    private boolean isJson;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        final RigLoader.Loaded loaded = RigLoader.load(folder, Optional.ofNullable(show));
        final PrintWriter out = spec.commandLine().getOut();
        final PrintWriter err = spec.commandLine().getErr();
        if (isJson) {
            out.println(FindingsJson.text(loaded.findings(), loaded.filesRead()));
        } else if (loaded.hasErrors()) {
            err.println(loaded.text());
        } else {
            out.println(loaded.text());
        }
        out.flush();
        err.flush();
        return loaded.hasErrors() ? WRONG : GOOD;
    }
}
