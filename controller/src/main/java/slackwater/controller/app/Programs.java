package slackwater.controller.app;

import java.util.Set;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import slackwater.model.finding.Nearest;

/** How every program of the project starts: help everywhere, one line for a mistake, never a stack trace. */
public final class Programs {
    private static final int FELL_SHORT = 1;
    private static final int WRONG = 2;

    private Programs() {}

    /** Runs the command that the arguments name. Returns the exit code: 0 good, 1 fell short, 2 given wrongly. */
    public static int run(final CommandLine program, final String... arguments) {
        prepare(program.getCommandSpec());
        program.registerConverter(double.class, word -> number(word, Double::valueOf, "number"));
        program.registerConverter(Double.class, word -> number(word, Double::valueOf, "number"));
        program.setCaseInsensitiveEnumValuesAllowed(true);
        program.registerConverter(Long.class, word -> number(word, Long::valueOf, "whole number"));
        program.registerConverter(long.class, word -> number(word, Long::valueOf, "whole number"));
        program.setParameterExceptionHandler((mistake, given) -> {
            final CommandLine command = mistake.getCommandLine();
            command.getErr().println(inOneLine(mistake));
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

    private static String inOneLine(final ParameterException mistake) {
        final Set<String> commands = mistake.getCommandLine().getSubcommands().keySet();
        if (mistake instanceof UnmatchedArgumentException other && !commands.isEmpty() && !other.isUnknownOption()) {
            final String word = other.getUnmatched().get(0);
            return "there is no command \"" + word + "\""
                    + Nearest.of(word, commands)
                            .map(near -> "; did you mean \"" + near + "\"?")
                            .orElse("");
        }
        return String.valueOf(mistake.getMessage()).lines().findFirst().orElse("wrong arguments");
    }

    /** The library would say that a word is not a double, or not a long. */
    private static <T> T number(final String word, final Function<String, T> reads, final String what) {
        try {
            return reads.apply(word);
        } catch (final NumberFormatException other) {
            throw new TypeConversionException("'" + word + "' is not a " + what);
        }
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
