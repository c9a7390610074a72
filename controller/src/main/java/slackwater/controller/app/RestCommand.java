package slackwater.controller.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slackwater.controller.gpio.GpioPins;
import slackwater.model.Controller;
import slackwater.model.Rig;

/** {@code rest}: drive every line to rest, and leave. */
@Command(
        name = "rest",
        description = "Drive every output of a controller to rest, and leave; for when no controller runs.",
        footer = {
            "",
            "Example:",
            "  slackwater rest rigs/sea-cave --controller north",
            "",
            "Exit: 0 every output is at rest, 2 otherwise."
        })
public final class RestCommand implements Callable<Integer> {
    private static final int GOOD = 0;
    private static final int WRONG = 2;

    @Mixin
    private OnBoard onBoard;

    @Option(
            names = "--pins",
            paramLabel = "KIND",
            defaultValue = "gpio",
            description = "gpio: this board's lines (default); virtual: rows in a file, on any computer.")
    private OnBoard.Kind pins;

    @Option(
            names = "--state",
            paramLabel = "FOLDER",
            description = "Where virtual lines are; state/NAME beside the rig unless given.")
    private @Nullable Path state;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        final Optional<RigLoader.Loaded> loaded =
                onBoard.load(spec.commandLine().getErr());
        if (loaded.isEmpty()) {
            return WRONG;
        }
        try {
            final Rig rig = loaded.get().rig().orElseThrow();
            final Controller controller = onBoard.controller(rig);
            final GpioPins lines =
                    OnBoard.claim(rig, controller, OnBoard.lines(controller, pins, onBoard.stateFolder(state)));
            lines.release();
            spec.commandLine()
                    .getOut()
                    .println(controller.name() + ": "
                            + rig.outputsOf(controller.name()).size() + " outputs at rest");
            spec.commandLine().getOut().flush();
            return GOOD;
        } catch (final OnBoard.Mistake mistake) {
            spec.commandLine().getErr().println(mistake.getMessage());
            spec.commandLine().getErr().flush();
            return WRONG;
        }
    }
}
