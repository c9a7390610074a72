package slackwater.simulator.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import slackwater.controller.app.CheckCommand;
import slackwater.controller.app.InstallCommand;
import slackwater.controller.app.Programs;
import slackwater.controller.app.RestCommand;
import slackwater.controller.app.RunCommand;

/** Every command of the whole program, from an explicit list. */
@Command(
        name = "slackwater",
        description = {
            "Check, simulate and wire a walk-past display whose every output knows its way back to rest.",
            "Software supervises; a hard-wired stop is the stop."
        },
        mixinStandardHelpOptions = true,
        subcommands = {
            DemoCommand.class,
            NewCommand.class,
            CheckCommand.class,
            SimulateCommand.class,
            BudgetCommand.class,
            WiringCommand.class,
            RunCommand.class,
            RestCommand.class,
            InstallCommand.class
        },
        footer = {"", "Example:", "  slackwater demo"})
public final class Slackwater {
    private Slackwater() {}

    /** The program with its commands, not yet run. */
    static CommandLine program() {
        return new CommandLine(new Slackwater());
    }

    public static void main(final String[] arguments) {
        System.exit(Programs.run(program(), arguments));
    }
}
