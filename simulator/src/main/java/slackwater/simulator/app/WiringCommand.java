package slackwater.simulator.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.controller.app.RigLoader;
import slackwater.model.Rig;
import slackwater.simulator.report.ReportFiles;
import slackwater.wiring.PinProposal;
import slackwater.wiring.PinWriter;
import slackwater.wiring.WiringSheet;

/** {@code wiring}: the table that a person needs at the bench. */
@Command(
        name = "wiring",
        description = {
            "Print the table a person needs at the bench, controller by controller.",
            "Pin by pin: what is wired, its level at rest, what the line does from power-on to program start."
        },
        footer = {"", "Example:", "  slackwater wiring rigs/sea-cave --markdown"})
final class WiringCommand implements Callable<Integer> {
    @Parameters(paramLabel = "RIG", description = "The rig's folder.")
    private Path folder;

    @ArgGroup
    private Form form = new Form();

    /** At most one of these. */
    static final class Form {
        @Option(names = "--propose-pins", description = "Choose pins for what has none, and write them into rig.toml.")
        private boolean isProposing;

        @Option(names = "--markdown", description = "Print Markdown.")
        private boolean isMarkdown;

        @Option(names = "--json", description = "Print one JSON object and nothing else.")
        private boolean isJson;
    }

    @Option(names = "--show", paramLabel = "NAME", description = "Which show to check with, where there are several.")
    private Optional<String> show = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        final RigLoader.Loaded loaded = RigLoader.load(folder, show);
        final PrintWriter err = spec.commandLine().getErr();
        if (loaded.rig().isEmpty()) {
            err.println(loaded.text());
            return Exit.WRONG;
        }
        final Rig rig = loaded.rig().get();
        if (form.isProposing) {
            return propose(rig);
        }
        final String sheet = form.isJson
                ? WiringSheet.json(rig)
                : form.isMarkdown ? WiringSheet.markdown(rig) : WiringSheet.text(rig);
        spec.commandLine().getOut().println(sheet);
        return Exit.GOOD;
    }

    private int propose(final Rig rig) {
        final PrintWriter out = spec.commandLine().getOut();
        final PinProposal proposal = PinProposal.of(rig);
        proposal.problems().forEach(problem -> spec.commandLine().getErr().println(problem));
        if (proposal.proposed().isEmpty()) {
            out.println("Every input and output has a pin already; nothing was changed.");
            return proposal.problems().isEmpty() ? Exit.GOOD : Exit.FELL_SHORT;
        }
        final Path file = folder.resolve("rig.toml");
        try {
            final PinWriter.Written written =
                    PinWriter.insert(Files.readString(file, StandardCharsets.UTF_8), proposal.proposed());
            final Optional<String> failed = ReportFiles.write(file, writer -> writer.write(written.toml()));
            if (failed.isPresent()) {
                spec.commandLine().getErr().println(failed.get());
                return Exit.FELL_SHORT;
            }
            written.written().forEach(pin -> out.println("[" + pin.table() + "] " + pin.asWritten()));
            written.left().forEach(left -> spec.commandLine().getErr().println(left));
        } catch (final IOException unreadable) {
            spec.commandLine().getErr().println(file + " cannot be read: " + unreadable.getMessage());
            return Exit.FELL_SHORT;
        }
        return proposal.problems().isEmpty() ? Exit.GOOD : Exit.FELL_SHORT;
    }
}
