package slackwater.controller.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slackwater.controller.gpio.BoardHere;
import slackwater.controller.gpio.GpioPins;
import slackwater.controller.gpio.LineRefusedException;
import slackwater.controller.gpio.Lines;
import slackwater.controller.gpio.Pi4jLines;
import slackwater.controller.gpio.VirtualLines;
import slackwater.model.Controller;
import slackwater.model.Rig;
import slackwater.model.finding.Nearest;

/** What every command on the board is given: a rig, one of its controllers, and which lines it may touch. */
final class OnBoard {
    static final Path ROOT = Path.of("/");
    private static final String VIRTUAL_LINES = "virtual-lines";

    @Parameters(paramLabel = "RIG", description = "The rig's folder.")
    private Path folder;

    @Option(
            names = "--controller",
            paramLabel = "NAME",
            required = true,
            description = "Which of the rig's controllers.")
    private String name;

    @Option(names = "--show", paramLabel = "NAME", description = "Which show, where there are several.")
    private @Nullable String show;

    /** Which lines. */
    enum Kind {
        GPIO,
        VIRTUAL
    }

    /** What a person can mend, in one line. */
    static final class Mistake extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Mistake(final String message) {
            super(message);
        }
    }

    Path folder() {
        return folder;
    }

    Path stateFolder(final @Nullable Path given) {
        return given == null ? folder.resolve("state").resolve(name) : given;
    }

    /** Reads and checks the rig; empty when it has errors, which are then printed. */
    Optional<RigLoader.Loaded> load(final PrintWriter err) {
        final RigLoader.Loaded loaded = RigLoader.load(folder, Optional.ofNullable(show));
        if (loaded.hasErrors()) {
            err.println(loaded.text());
            err.flush();
            return Optional.empty();
        }
        return Optional.of(loaded);
    }

    Controller controller(final Rig rig) {
        return rig.controllers().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> {
                    final List<String> names =
                            rig.controllers().stream().map(Controller::name).toList();
                    return new Mistake("the rig has no controller \"" + name + "\"; it has " + String.join(", ", names)
                            + Nearest.of(name, names)
                                    .map(near -> "; did you mean \"" + near + "\"?")
                                    .orElse(""));
                });
    }

    /** Claims every line; from then on every output is at rest. */
    static GpioPins claim(final Rig rig, final Controller controller, final Lines lines) {
        try {
            return GpioPins.claim(rig, controller, lines);
        } catch (final LineRefusedException refused) {
            throw new Mistake(String.valueOf(refused.getMessage()));
        }
    }

    /** Opens the lines that a person asked for, and no others in their place. */
    static Lines lines(final Controller controller, final Kind kind, final Path state) {
        if (kind == Kind.VIRTUAL) {
            try {
                Files.createDirectories(state);
                return VirtualLines.open(state.resolve(VIRTUAL_LINES));
            } catch (final IOException unwritable) {
                throw new Mistake("virtual pins need a folder that can be written, and " + state + " cannot ("
                        + unwritable + "): give --state another one");
            }
        }
        try {
            BoardHere.require(ROOT, controller.board().word());
            return Pi4jLines.open();
        } catch (final LineRefusedException refused) {
            throw new Mistake(String.valueOf(refused.getMessage()));
        }
    }
}
