package slackwater.controller.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slackwater.controller.install.BootSetting;
import slackwater.controller.install.RestScript;
import slackwater.controller.install.ServiceUnit;
import slackwater.model.Controller;
import slackwater.model.Rig;

/** {@code install}: the files that make a controller a service of the board, and what root must do with them. */
@Command(
        name = "install",
        description = {
            "Make the service, the script that rests every line without Java, and the watchdog's rule;",
            "print what a person runs as root. Nothing outside the folder is touched."
        },
        footer = {
            "",
            "Example:",
            "  slackwater install rigs/sea-cave --controller north --to north-service",
            "",
            "Exit: 0 made, 2 otherwise."
        })
public final class InstallCommand implements Callable<Integer> {
    private static final int GOOD = 0;
    private static final int WRONG = 2;
    private static final String BIN = "/usr/local/lib/slackwater";

    @Mixin
    private OnBoard onBoard;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            description = "Where the files are made; ./slackwater-NAME unless given.")
    private @Nullable Path to;

    @Option(
            names = "--program",
            paramLabel = "FILE",
            defaultValue = BIN + "/slackwater-controller",
            description = "The packaged controller's launcher on the board; default ${DEFAULT-VALUE}.")
    private Path program;

    @Option(names = "--dry-run", description = "Print the files instead of making them.")
    private boolean isDry;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        final PrintWriter out = spec.commandLine().getOut();
        final PrintWriter err = spec.commandLine().getErr();
        final Optional<RigLoader.Loaded> loaded = onBoard.load(err);
        if (loaded.isEmpty()) {
            return WRONG;
        }
        try {
            final Rig rig = loaded.get().rig().orElseThrow();
            final Controller controller = onBoard.controller(rig);
            requireWired(rig, controller);
            final Map<String, String> files =
                    files(rig, controller, loaded.get().show().name());
            final Path folder = to == null ? Path.of(ServiceUnit.name(controller)) : to;
            if (isDry) {
                files.forEach((name, text) -> out.println("---- " + name + System.lineSeparator() + text));
            } else {
                make(folder, files);
            }
            out.println(advice(controller, folder));
            out.flush();
            return GOOD;
        } catch (final OnBoard.Mistake mistake) {
            err.println(mistake.getMessage());
            err.flush();
            return WRONG;
        }
    }

    private static void requireWired(final Rig rig, final Controller controller) {
        final List<String> unwired = RestScript.unwired(rig, controller);
        if (!unwired.isEmpty()) {
            throw new OnBoard.Mistake(String.join(", ", unwired)
                    + ": no pin yet, so nothing could put it to rest; write one into the rig"
                    + " (slackwater wiring --propose-pins)");
        }
    }

    private Map<String, String> files(final Rig rig, final Controller controller, final String show) {
        final String name = ServiceUnit.name(controller);
        final Map<String, String> files = new LinkedHashMap<>();
        files.put(
                name + ".service",
                ServiceUnit.text(
                        rig,
                        controller,
                        show,
                        new ServiceUnit.Places(
                                program,
                                onBoard.folder().toAbsolutePath().normalize(),
                                state(controller),
                                Path.of(BIN, name + "-rest"))));
        files.put(name + "-rest", RestScript.text(rig, controller));
        if (controller.watchdog().isPresent()) {
            files.put("60-slackwater-watchdog.rules", ServiceUnit.watchdogRule());
        }
        return files;
    }

    private static Path state(final Controller controller) {
        return Path.of("/var/lib/slackwater", controller.name());
    }

    private static void make(final Path folder, final Map<String, String> files) {
        try {
            Files.createDirectories(folder);
            for (final Map.Entry<String, String> file : files.entrySet()) {
                final Path made = folder.resolve(file.getKey());
                Files.writeString(made, file.getValue(), StandardCharsets.UTF_8);
                if (file.getKey().endsWith("-rest") && !made.toFile().setExecutable(true)) {
                    throw new IOException(made + " cannot be made executable");
                }
            }
        } catch (final IOException unwritable) {
            throw new OnBoard.Mistake(
                    "the files cannot be made in " + folder + " (" + unwritable + "): give --to another folder");
        }
    }

    private String advice(final Controller controller, final Path folder) {
        final String name = ServiceUnit.name(controller);
        final String rule = controller.watchdog().isEmpty() ? "" : """
                  install -m 644 %1$s/60-slackwater-watchdog.rules /etc/udev/rules.d/
                  udevadm control --reload && udevadm trigger --subsystem-match=watchdog
                """.formatted(folder);
        return """
                Files for %2$s: %1$s

                As root, on the board, with the packaged controller unpacked in %3$s:
                  apt-get install openjdk-17-jre-headless gpiod
                  useradd --system --no-create-home --groups gpio slackwater
                  install -d -o slackwater %4$s
                  install -m 755 %1$s/%2$s-rest %3$s/
                  install -m 644 %1$s/%2$s.service /etc/systemd/system/
                %5$s  %3$s/slackwater-controller --make-archive
                  systemctl daemon-reload && systemctl enable --now %2$s

                Before the first evening, try the stop action: kill -9 the program with a lamp on, and watch it go out.
                On this computer: %6$s.
                """.formatted(
                folder,
                name,
                BIN,
                state(controller),
                rule,
                BootSetting.read(OnBoard.ROOT).text()).stripTrailing();
    }
}
