package slackwater.simulator.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slackwater.controller.app.RigLoader;
import slackwater.model.Rig;
import slackwater.simulator.demo.Act;
import slackwater.simulator.demo.DemoPage;
import slackwater.simulator.demo.TwoActs;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.report.ReportFiles;
import slackwater.simulator.visitor.CrowdMaker;

/** {@code demo}: an evening in two acts. */
@Command(
        name = "demo",
        description = {
            "Play an evening twice, with the same visitors and the same mishap: on rigs/sea-cave-sketch, a plausible",
            "first sketch of a yard, and on rigs/sea-cave, the corrected rig; and say what went wrong and what fixed it."
        },
        footer = {"", "Example:", "  slackwater demo --html demo.html"})
final class DemoCommand implements Callable<Integer> {
    private static final Path SKETCH = Path.of("rigs", "sea-cave-sketch");
    private static final Path RIG = Path.of("rigs", "sea-cave");
    private static final Duration LASTS = Duration.ofHours(3);

    /** The launcher says where the project lies; without it, the folder one stands in. */
    private static final String HOME = "slackwater.home";

    @Option(names = "--seed", paramLabel = "N", description = "Seed of every draw. Usual: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "Write both acts as one page that plays them side by side.")
    private Optional<Path> html = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        final PrintWriter out = spec.commandLine().getOut();
        final PrintWriter err = spec.commandLine().getErr();
        final Path home = Path.of(System.getProperty(HOME, ""));
        for (final Path folder : new Path[] {home.resolve(SKETCH), home.resolve(RIG)}) {
            if (!Files.isDirectory(folder)) {
                err.println(folder + " is not here; start the demo with the slackwater launcher of the project");
                return Exit.WRONG;
            }
            final RigLoader.Loaded loaded = RigLoader.load(folder, Optional.empty());
            if (loaded.rig().isEmpty()) {
                err.println(loaded.text());
                return Exit.WRONG;
            }
        }
        final Act.Seen sketch = Act.run(plan(home.resolve(SKETCH)), TwoActs.SKETCH_LID, new ProgressLine(err));
        final Act.Seen rig = Act.run(plan(home.resolve(RIG)), TwoActs.RIG_LID, new ProgressLine(err));
        final TwoActs acts;
        try {
            acts = TwoActs.of(sketch, rig, home.resolve(SKETCH), home.resolve(RIG));
        } catch (final IOException unreadable) {
            err.println("the rigs of the demo cannot be read any more: " + ReportFiles.reason(unreadable));
            return Exit.WRONG;
        }
        acts.lines().forEach(out::println);
        out.println("Try next: slackwater budget rigs/sea-cave-sketch, or simulate rigs/sea-cave --html evening.html");
        out.flush();
        final Optional<String> unwritten =
                html.flatMap(file -> ReportFiles.write(file, page -> DemoPage.write(acts, page)));
        unwritten.ifPresent(err::println);
        return unwritten.isEmpty() ? Exit.GOOD : Exit.FELL_SHORT;
    }

    private EveningPlan plan(final Path folder) {
        final RigLoader.Loaded loaded = RigLoader.load(folder, Optional.empty());
        final Rig rig = loaded.rig().orElseThrow();
        return new EveningPlan(
                rig,
                loaded.show(),
                loaded.codes(),
                seed,
                EveningPlan.startOf(rig, loaded.show()),
                LASTS,
                CrowdMaker.draw(rig.surroundings().way(), seed, 0, LASTS.toNanos()),
                Optional.empty(),
                true);
    }
}
