package slackwater.controller.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program that is packaged alone for the board. */
@Command(
        name = "slackwater-controller",
        description = "The controller's own part of Slackwater, for the board.",
        mixinStandardHelpOptions = true,
        subcommands = {CheckCommand.class, RunCommand.class, RestCommand.class, InstallCommand.class})
public final class ControllerProgram {
    private ControllerProgram() {}

    public static void main(final String[] arguments) {
        System.exit(Programs.run(new CommandLine(new ControllerProgram()), arguments));
    }
}
