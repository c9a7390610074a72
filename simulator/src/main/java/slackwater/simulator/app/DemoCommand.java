package slackwater.simulator.app;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slackwater.controller.app.RigLoader;
import slackwater.simulator.evening.EveningRun;
import slackwater.simulator.report.EveningPage;
import slackwater.simulator.report.ReportFiles;
import slackwater.simulator.report.Summary;

/** {@code demo}: an evening on the sea cave walk. */
@Command(
        name = "demo",
        description = "Run an evening of rigs/sea-cave, say what happened, and what to try next.",
        footer = {"", "Example:", "  slackwater demo --html evening.html"})
final class DemoCommand implements Callable<Integer> {
    private static final Path RIG = Path.of("rigs", "sea-cave");

    /** The launcher says where the project lies; without it, the folder one stands in. */
    private static final String HOME = "slackwater.home";

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "Write the evening as one page that needs nothing else.")
    private Optional<Path> html = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        final PrintWriter out = spec.commandLine().getOut();
        final PrintWriter err = spec.commandLine().getErr();
        final Path folder = Path.of(System.getProperty(HOME, "")).resolve(RIG);
        if (!Files.isDirectory(folder)) {
            err.println(folder + " is not here; start the demo with the slackwater launcher of the project");
            return Exit.WRONG;
        }
        final RigLoader.Loaded loaded = RigLoader.load(folder, Optional.empty());
        if (loaded.rig().isEmpty()) {
            err.println(loaded.text());
            return Exit.WRONG;
        }
        try {
            final EveningOptions usual = new EveningOptions();
            final EveningRun.Result result = new EveningRun(
                            usual.plan(loaded, loaded.rig().get(), err))
                    .run(new ProgressLine(err), System::nanoTime);
            out.println(Summary.text(result.evening()));
            out.println(tryNext());
            final Optional<String> unwritten = html.flatMap(
                    file -> ReportFiles.write(file, page -> EveningPage.write(result.evening(), result.lanes(), page)));
            unwritten.ifPresent(err::println);
            return unwritten.isEmpty() && result.evening().violations().isEmpty() ? Exit.GOOD : Exit.FELL_SHORT;
        } catch (final EveningOptions.Mistake impossible) {
            throw new IllegalStateException("the usual evening is always possible", impossible);
        }
    }

    private static String tryNext() {
        return String.join(
                System.lineSeparator(),
                "",
                "Try next:",
                "  slackwater new my-yard                               a first rig of twenty lines",
                "  slackwater simulate rigs/sea-cave --html evening.html   the evening as a page",
                "  slackwater check rigs/sea-cave                       what the checks say",
                "  slackwater wiring rigs/sea-cave                      the table for the bench");
    }
}
