package slackwater.simulator.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.controller.app.RigLoader;
import slackwater.simulator.budget.Budget;
import slackwater.simulator.budget.BudgetJson;
import slackwater.simulator.budget.BudgetPage;
import slackwater.simulator.budget.BudgetText;
import slackwater.simulator.budget.BusiestHour;
import slackwater.simulator.report.ReportFiles;

/** {@code budget}: what a rig asks for against what it has. */
@Command(
        name = "budget",
        description = {
            "Reckon air, strokes, fog, mist, current, cables, pins, contacts, flashes, timing and the evening,",
            "line by line: what the rig and its show ask for, against what there is."
        },
        footer = {
            "",
            "Example:",
            "  slackwater budget rigs/sea-cave --html budget.html",
            "",
            "Exit: 0 everything fits, 1 something falls short or a report was not written, 2 what was given is wrong."
        })
final class BudgetCommand implements Callable<Integer> {
    @Parameters(paramLabel = "RIG", description = "The rig's folder.")
    private Path folder;

    @Option(names = "--show", paramLabel = "NAME", description = "Which show, where there are several.")
    private Optional<String> show = Optional.empty();

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "Write the budget as one page, with its busiest hour in pictures.")
    private Optional<Path> html = Optional.empty();

    @Option(names = "--all", description = "Print every line, those that fit with ease too.")
    private boolean isWhole;

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
        final Budget budget = Budget.of(loaded.rig().get(), loaded.show());
        spec.commandLine().getOut().print(isJson ? BudgetJson.text(budget) : BudgetText.of(budget, isWhole));
        spec.commandLine().getOut().flush();
        final Optional<String> unwritten = html.flatMap(file -> ReportFiles.write(
                file,
                out -> BudgetPage.write(
                        budget, BusiestHour.plots(loaded.rig().get(), loaded.show(), loaded.codes()), out)));
        unwritten.ifPresent(err::println);
        return budget.fits() && unwritten.isEmpty() ? Exit.GOOD : Exit.FELL_SHORT;
    }
}
