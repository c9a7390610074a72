package slackwater.controller.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slackwater.controller.disk.StateFolder;
import slackwater.controller.gpio.GpioPins;
import slackwater.controller.gpio.Lines;
import slackwater.controller.install.BootSetting;
import slackwater.controller.live.DeviceWatchdog;
import slackwater.controller.live.LiveController;
import slackwater.controller.live.RealTime;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.model.Controller;
import slackwater.model.Output;
import slackwater.model.Rig;

/** {@code run}: the controller. */
@Command(
        name = "run",
        description = {
            "Run one controller of a rig: every output is claimed at rest, then the scan begins.",
            "Ending it (Ctrl-C, or a TERM signal) brings every output to rest first."
        },
        footer = {
            "",
            "Example:",
            "  slackwater run rigs/sea-cave --controller north --pins virtual",
            "",
            "With --pins virtual the lines are rows in STATE/virtual-lines: read outputs there, set inputs there.",
            "Exit: 0 its time was over, 143 ended by TERM, 130 by Ctrl-C, 1 it broke, 2 what was given is wrong,",
            "which a rig changed under a running controller is too."
        })
public final class RunCommand implements Callable<Integer> {
    private static final Logger LOG = LoggerFactory.getLogger(RunCommand.class);
    private static final int GOOD = 0;
    private static final int BROKE = 1;
    private static final int WRONG = 2;
    private static final int SCAN_PRIORITY = 50;
    private static final long UNUSUAL = 1L << 40;

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
            description = "Where latches and journal are kept; state/NAME beside the rig unless given.")
    private @Nullable Path state;

    @Option(names = "--seed", paramLabel = "N", description = "Of every draw; each start has its own unless given.")
    private @Nullable Long seed;

    @Option(
            names = "--for",
            paramLabel = "SECONDS",
            description = "End after so long and print how late the scans were.")
    private @Nullable Long forSeconds;

    @Spec
    private CommandSpec spec;

    private final UnaryOperator<Lines> wrap;

    public RunCommand() {
        this(lines -> lines);
    }

    /** For tests: what stands between the pins and their lines. */
    RunCommand(final UnaryOperator<Lines> wrap) {
        this.wrap = wrap;
    }

    @Override
    public Integer call() throws InterruptedException {
        final PrintWriter err = spec.commandLine().getErr();
        final Optional<RigLoader.Loaded> loaded = onBoard.load(err);
        if (loaded.isEmpty()) {
            return WRONG;
        }
        try {
            return run(loaded.get());
        } catch (final OnBoard.Mistake | StateFolder.TakenException | DeviceWatchdog.UnusableException mistake) {
            say(String.valueOf(mistake.getMessage()));
            return WRONG;
        }
    }

    private int run(final RigLoader.Loaded loaded) throws InterruptedException {
        final Rig rig = loaded.rig().orElseThrow();
        final Controller controller = onBoard.controller(rig);
        final Path folder = onBoard.stateFolder(state);
        final StateFolder kept;
        final GpioPins lines;
        if (pins == OnBoard.Kind.VIRTUAL) { // whose lines are in the folder: first make sure that it is ours
            kept = StateFolder.open(folder, unusual());
            lines = OnBoard.claim(rig, controller, wrap.apply(OnBoard.lines(controller, pins, folder)));
        } else { // rest before anything slower
            lines = OnBoard.claim(rig, controller, wrap.apply(OnBoard.lines(controller, pins, folder)));
            kept = openOrRelease(folder, lines);
            sayWhatTheBoardLacks(rig, controller);
        }
        kept.trouble().ifPresent(this::say);
        final Optional<DeviceWatchdog> watchdog = watchdog(rig, controller, lines);
        final long ownSeed = seed == null ? kept.bootId() : seed;
        final Options options = Options.plain(ownSeed).with(loaded.codes());
        final Plan plan = Plan.compile(
                rig,
                loaded.show(),
                controller.name(),
                new Options(ownSeed, kept.bootId(), options.secrets(), options.codes()));
        final LiveController live = new LiveController(new LiveController.Setup(
                plan,
                new LiveController.Origin(
                        onBoard.folder(), rig.name(), loaded.show().name(), ownSeed),
                lines,
                kept,
                watchdog,
                new LiveController.Surrounds(
                        OnBoard.ROOT,
                        System.getenv(),
                        this::say,
                        () -> Runtime.getRuntime().halt(BROKE))));
        return live(live, plan, kept);
    }

    private static StateFolder openOrRelease(final Path folder, final GpioPins lines) {
        try {
            return StateFolder.open(folder, unusual());
        } catch (final StateFolder.TakenException taken) {
            lines.release();
            throw taken;
        }
    }

    /** Never a count of starts: far above any, and no two starts have the same. */
    private static long unusual() {
        return UNUSUAL + System.currentTimeMillis();
    }

    private Optional<DeviceWatchdog> watchdog(final Rig rig, final Controller controller, final GpioPins lines) {
        if (controller.watchdog().isEmpty()) {
            return Optional.empty();
        }
        if (pins == OnBoard.Kind.VIRTUAL) {
            LOG.info("virtual pins: the board's watchdog is left alone");
            return Optional.empty();
        }
        try {
            return Optional.of(DeviceWatchdog.open(
                    OnBoard.ROOT, controller.watchdog().get(), rig.scan().toNanos()));
        } catch (final DeviceWatchdog.UnusableException unusable) {
            lines.release(); // claimed at rest, and nothing was energised since
            throw unusable;
        }
    }

    private void sayWhatTheBoardLacks(final Rig rig, final Controller controller) {
        final BootSetting.Outputs outputs = BootSetting.read(OnBoard.ROOT);
        if (outputs != BootSetting.Outputs.ARE_LET_GO) {
            say(outputs.text());
        }
        rig.outputsOf(controller.name()).stream()
                .filter(output -> output.feedback() == Output.Feedback.LOAD)
                .forEach(output -> say(output.name() + " has feedback at its load, which this program cannot read yet:"
                        + " it counts as none"));
    }

    private int live(final LiveController live, final Plan plan, final StateFolder kept) throws InterruptedException {
        Runtime.getRuntime().addShutdownHook(new Thread(live::stop, "stop"));
        live.start();
        if (pins == OnBoard.Kind.GPIO) {
            RealTime.raise("scan", SCAN_PRIORITY)
                    .ifPresent(why -> say("the scan runs at ordinary priority (" + why + ")"));
        }
        final PrintWriter out = spec.commandLine().getOut();
        out.println(plan.places().controller() + " runs: "
                + plan.places().outputs().size() + " outputs at rest, "
                + plan.places().inputs().size() + " inputs, scan " + rigScanMs(plan) + " ms, start " + kept.bootId()
                + ", pins " + pins.name().toLowerCase(Locale.ROOT));
        out.flush();
        final LiveController.End end =
                live.await(forSeconds == null ? Optional.empty() : Optional.of(Duration.ofSeconds(forSeconds)));
        live.stop();
        return switch (end) {
            case NOT_YET, STOPPED -> {
                if (forSeconds != null) {
                    out.println(live.lateness().text());
                    out.flush();
                }
                yield GOOD;
            }
            case RIG_CHANGED -> {
                say("the rig's files have changed since they were checked: every output is at rest; check the rig and"
                        + " start again");
                yield WRONG;
            }
            case BROKEN -> {
                say("the scan broke (" + live.broken() + "): every output is at rest");
                yield BROKE;
            }
        };
    }

    private static long rigScanMs(final Plan plan) {
        return Duration.ofNanos(plan.periodNs()).toMillis();
    }

    private void say(final String line) {
        final PrintWriter err = spec.commandLine().getErr();
        err.println(line);
        err.flush();
    }
}
