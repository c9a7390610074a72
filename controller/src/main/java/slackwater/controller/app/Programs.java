package slackwater.controller.app;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** How every program of the project starts: help everywhere, one line for a mistake, never a stack trace. */
public final class Programs {
    private static final int FELL_SHORT = 1;
    private static final int WRONG = 2;

    private Programs() {}

    /** Runs the command that the arguments name. Returns the exit code: 0 good, 1 fell short, 2 given wrongly. */
    public static int run(final CommandLine program, final String... arguments) {
        prepare(program.getCommandSpec());
        program.setParameterExceptionHandler((mistake, given) -> {
            final CommandLine command = mistake.getCommandLine();
            command.getErr()
                    .println(String.valueOf(mistake.getMessage())
                            .lines()
                            .findFirst()
                            .orElse("wrong arguments"));
            command.usage(command.getErr());
            return WRONG;
        });
        program.setExecutionExceptionHandler((broken, command, parsed) -> {
            command.getErr()
                    .println("this should not have happened: " + broken
                            + "; please report it with the command and the rig");
            return FELL_SHORT;
        });
        if (arguments.length == 0) {
            program.usage(program.getErr());
            return WRONG;
        }
        return program.execute(arguments);
    }

    /** What the build wrote into the jar's manifest. */
    private static String version() {
        final String built = Programs.class.getPackage().getImplementationVersion();
        return "Slackwater " + (built == null ? "from its sources" : built);
    }

    private static void prepare(final CommandSpec spec) {
        spec.version(version());
        for (final CommandLine command : spec.subcommands().values()) {
            command.getCommandSpec().mixinStandardHelpOptions(true);
            prepare(command.getCommandSpec());
        }
    }
}
