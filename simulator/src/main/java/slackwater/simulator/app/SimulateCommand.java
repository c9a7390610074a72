package slackwater.simulator.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.controller.app.RigLoader;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.evening.EveningRun;
import slackwater.simulator.report.EveningPage;
import slackwater.simulator.report.ReportFiles;
import slackwater.simulator.report.Summary;
import slackwater.simulator.report.SummaryJson;
import slackwater.simulator.report.VcdWriter;

/** {@code simulate}: an evening in virtual time, without a window. */
@Command(
        name = "simulate",
        description = "Run a rig's show through a whole evening on virtual pins, and say what happened.",
        footer = {
            "",
            "Example:",
            "  slackwater simulate rigs/sea-cave --hours 4 --seed 7 --html evening.html",
            "",
            "Exit: 0 no violation, 1 a violation or an unwritten report, 2 what was given is wrong."
        })
final class SimulateCommand implements Callable<Integer> {
    @Parameters(paramLabel = "RIG", description = "The rig's folder.")
    private Path folder;

    @Option(names = "--show", paramLabel = "NAME", description = "Which show, where there are several.")
    private Optional<String> show = Optional.empty();

    @Mixin
    private EveningOptions options = new EveningOptions();

    @Option(names = "--vcd", paramLabel = "FILE", description = "Write all lines as a waveform (IEEE 1364 VCD).")
    private Optional<Path> vcd = Optional.empty();

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "Write the evening as one page that needs nothing else.")
    private Optional<Path> html = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object and nothing else.")
    private boolean isJson;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        final PrintWriter err = spec.commandLine().getErr();
        final RigLoader.Loaded loaded = RigLoader.load(folder, show);
        if (loaded.rig().isEmpty()) {
            err.println(loaded.text());
            return Exit.WRONG;
        }
        final EveningPlan plan;
        try {
            plan = options.plan(loaded, loaded.rig().get(), err);
        } catch (final EveningOptions.Mistake mistake) {
            err.println(mistake.getMessage());
            return Exit.WRONG;
        }
        final EveningRun.Result result = new EveningRun(plan).run(new ProgressLine(err), System::nanoTime);
        spec.commandLine()
                .getOut()
                .println(isJson ? SummaryJson.text(result.evening()) : Summary.text(result.evening()));
        final boolean isWritten = write(result, err);
        return isWritten && result.evening().violations().isEmpty() ? Exit.GOOD : Exit.FELL_SHORT;
    }

    private boolean write(final EveningRun.Result result, final PrintWriter err) {
        final Optional<String> noVcd =
                vcd.flatMap(file -> ReportFiles.write(file, out -> VcdWriter.write(result.lanes(), out)));
        final Optional<String> noHtml = html.flatMap(
                file -> ReportFiles.write(file, out -> EveningPage.write(result.evening(), result.lanes(), out)));
        noVcd.ifPresent(err::println);
        noHtml.ifPresent(err::println);
        return noVcd.isEmpty() && noHtml.isEmpty();
    }
}
