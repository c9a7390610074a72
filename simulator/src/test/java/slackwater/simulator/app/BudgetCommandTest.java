package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BudgetCommandTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"first", "driftwood", "sea-cave"})
    void everyExampleFits(final String name) {
        final Cli.Outcome outcome = Cli.run("budget", Cli.example(name)).isGood();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out().lines().filter(line -> line.length() > 120)).isEmpty();
    }

    @Test
    void theSeaCaveIsReckonedInEveryPart() {
        assertThat(Cli.run("budget", Cli.example("sea-cave")).isGood().out())
                .contains(
                        "AIR  ",
                        "STROKES  ",
                        "FOG  ",
                        "WILL IT STAY LOW?  ",
                        "MIST  ",
                        "CURRENT  ",
                        "CABLES  ",
                        "PINS  ",
                        "CONTACTS  ",
                        "FLASHES  ",
                        "TIMING  ",
                        "EVENING  ",
                        "more that fit; --all shows them",
                        "\nWhat could be reckoned fits, 3 left out; ");
    }

    @Test
    void asJsonItIsOneObjectWithEveryLine() throws IOException {
        final Cli.Outcome outcome =
                Cli.run("budget", Cli.example("sea-cave"), "--json").isGood();
        final Json json = Json.only(outcome.out());
        assertThat(json.objects("lines")).hasSizeGreaterThan(100);
        assertThat(json.objects("lines")).allSatisfy(line -> {
            assertThat(line.text("group")).isNotBlank();
            assertThat(line.text("about")).isNotBlank();
            assertThat(line.text("formula")).isNotBlank();
            assertThat(line.text("verdict")).isIn("fits", "look", "short", "told");
        });
        assertThat(outcome.err()).isEmpty();
    }

    @Test
    void whatFallsShortIsSaidWithWhatWouldMakeItFitAndExitsOne() throws IOException {
        final Path rig = copy("sea-cave");
        final Path file = rig.resolve("rig.toml");
        Files.writeString(file, Files.readString(file).replace("breaker = \"16 A\"", "breaker = \"10 A\""));
        final Cli.Outcome outcome = Cli.run("budget", rig);
        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out().replaceAll("\\s+", " "))
                .contains("Short: boathouse, continuous load at 125 % and the rest: ", "or a circuit of 15 A by an")
                .contains("1 of ");
    }

    @Test
    void thePageNeedsNothingBesideItAndShowsTheBusiestHour() throws IOException {
        final Path page = folder.resolve("budget.html");
        Cli.run("budget", Cli.example("driftwood"), "--html", page).isGood();
        assertThat(Files.readString(page))
                .startsWith("<!DOCTYPE html>")
                .contains("The busiest hour", "Block temperature", "</svg>")
                .doesNotContain("http://", "https://", "<script");
    }

    @Test
    void anUnwritablePageIsOneLineAndTheBudgetIsStillPrinted() {
        final Cli.Outcome outcome = Cli.run(
                "budget",
                Cli.example("driftwood"),
                "--html",
                folder.resolve("no").resolve("b.html"));
        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).contains("Driftwood log");
        assertThat(outcome.err().lines()).hasSize(1);
        outcome.speaksPlainly();
    }

    @Test
    void aBrokenRigIsRefusedWithItsFindings() throws IOException {
        final Path rig = copy("driftwood");
        Files.writeString(rig.resolve("rig.toml"), "[output.x]\nkind = \"valv\"\n");
        assertThat(Cli.run("budget", rig).isRefused().err()).contains("unknown-word", "did you mean \"valve\"?");
    }

    private Path copy(final String example) throws IOException {
        final Path copy = folder.resolve(example);
        final Path from = Cli.example(example);
        try (var files = Files.walk(from)) {
            for (final Path file : files.filter(Files::isRegularFile).toList()) {
                final Path target = copy.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        return copy;
    }
}
