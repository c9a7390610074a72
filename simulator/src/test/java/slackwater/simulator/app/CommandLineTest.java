package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every command has in common: help with an example, and exit 2 with help for what was typed wrongly. */
class CommandLineTest {

    @ParameterizedTest
    @ValueSource(strings = {"demo", "new", "check", "simulate", "budget", "wiring", "run", "rest", "install"})
    void everyCommandHelpsWithAnExampleOfItself(final String command) {
        final Cli.Outcome outcome = Cli.run(command, "--help").isGood();

        assertThat(outcome.out())
                .startsWith("Usage: slackwater " + command)
                .contains("Example:\n  slackwater " + command);
        assertThat(outcome.err()).isEmpty();
    }

    @Test
    void theProgramsHelpNamesEveryCommandAndSaysWhatTheStopIs() {
        final Cli.Outcome outcome = Cli.run("--help").isGood();

        assertThat(outcome.out())
                .contains("  demo ", "  new ", "  check ", "  simulate ", "  wiring ")
                .contains("Example:\n  slackwater demo", "a hard-wired stop is the stop");
        assertThat(outcome.err()).isEmpty();
    }

    @Test
    void theVersionIsSaid() {
        assertThat(Cli.run("--version").isGood().out()).matches("Slackwater \\S.*\n");
        assertThat(Cli.run("check", "--version").isGood().out()).matches("Slackwater \\S.*\n");
    }

    @Test
    void withoutAnArgumentTheHelpGoesToStderr() {
        final Cli.Outcome outcome = Cli.run().isRefused();

        assertThat(outcome.err()).startsWith("Usage: slackwater").contains("simulate");
    }

    @Test
    void anUnknownCommandIsNamedWithTheNearestOne() {
        final Cli.Outcome outcome = Cli.run("simulatee").isRefused();

        assertThat(outcome.err())
                .startsWith("there is no command \"simulatee\"; did you mean \"simulate\"?\nUsage: slackwater ");
    }

    @Test
    void aCommandThatIsLikeNoneIsNamedWithoutAGuess() {
        assertThat(Cli.run("xyzzy").isRefused().err()).startsWith("there is no command \"xyzzy\"\nUsage: slackwater ");
    }

    @ParameterizedTest
    @CsvSource({"check", "simulate", "wiring", "new"})
    void anUnknownOptionBringsTheCommandsOwnHelp(final String command) {
        final Cli.Outcome outcome = Cli.run(command, "folder", "--sideways").isRefused();

        assertThat(outcome.err())
                .startsWith("Unknown option: '--sideways'\n")
                .contains("Usage: slackwater " + command, "Example:");
    }

    @ParameterizedTest
    @CsvSource({"check, RIG", "simulate, RIG", "wiring, RIG", "new, FOLDER"})
    void aMissingFolderIsNamed(final String command, final String what) {
        final Cli.Outcome outcome = Cli.run(command).isRefused();

        assertThat(outcome.err())
                .startsWith("Missing required parameter: '" + what + "'\n")
                .contains("Usage: ");
    }

    @Test
    void twoFormsOfTheSheetAtOnceAreRefused() {
        assertThat(Cli.run("wiring", Cli.example("first"), "--json", "--markdown")
                        .isRefused()
                        .err())
                .contains("--markdown, --json are mutually exclusive", "Usage: slackwater wiring");
    }

    @Test
    void aWordInPlaceOfANumberIsNamedWithItsOption() {
        assertThat(Cli.run("simulate", Cli.example("first"), "--hours", "abc")
                        .isRefused()
                        .err())
                .startsWith("Invalid value for option '--hours': 'abc' is not a number\nUsage: ");
        assertThat(Cli.run("simulate", Cli.example("first"), "--seed", "1.5")
                        .isRefused()
                        .err())
                .startsWith("Invalid value for option '--seed': '1.5' is not a whole number\nUsage: ");
    }
}
