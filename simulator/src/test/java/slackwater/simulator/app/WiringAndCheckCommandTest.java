package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WiringAndCheckCommandTest {

    @ParameterizedTest
    @ValueSource(strings = {"first", "driftwood", "sea-cave"})
    void noExampleHasAnError(final String name) {
        final Cli.Outcome outcome = Cli.run("check", Cli.example(name)).isGood();

        assertThat(outcome.out()).contains("2 files read, 0 errors, ");
        assertThat(outcome.err()).isEmpty();
    }

    @Test
    void checkAsJsonIsOneObject() throws IOException {
        final Cli.Outcome outcome =
                Cli.run("check", Cli.example("first"), "--json").isGood();
        final Json json = Json.only(outcome.out());

        assertThat(outcome.err()).isEmpty();
        assertThat(json.number("filesRead")).isEqualTo(2);
        assertThat(json.number("errors")).isZero();
        assertThat(json.objects("findings")).singleElement().satisfies(finding -> {
            assertThat(finding.text("code")).isEqualTo("not-wired");
            assertThat(finding.text("severity")).isEqualTo("warning");
            assertThat(finding.text("file")).endsWith("rig.toml");
        });
    }

    @Test
    void checkAsJsonOfAMissingRigIsStillOneObject() throws IOException {
        final Cli.Outcome outcome = Cli.run("check", "no-such-rig", "--json");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).isEmpty();
        assertThat(Json.only(outcome.out()).objects("findings"))
                .extracting(finding -> finding.text("code"))
                .containsExactly("no-folder");
    }

    @Test
    void theSheetOfTheSeaCaveNamesEveryLineOfBothControllers() {
        final String sheet = Cli.run("wiring", Cli.example("sea-cave")).isGood().out();

        assertThat(sheet)
                .contains("controller north (pi-4)", "controller south (pi-4)")
                .contains("north-clam-lid", "south-clam-lid", "south-spray-mist", "stop-loop")
                .startsWith("Before you touch anything");
    }

    @Test
    void theSheetAsMarkdownHasTables() {
        assertThat(Cli.run("wiring", Cli.example("sea-cave"), "--markdown")
                        .isGood()
                        .out())
                .contains("# ", "| --- |", "north-clam-lid");
    }

    @Test
    void theSheetAsJsonIsOneObjectWithEveryLineOfEachController() throws IOException {
        final Cli.Outcome outcome =
                Cli.run("wiring", Cli.example("sea-cave"), "--json").isGood();
        final Json json = Json.only(outcome.out());

        assertThat(outcome.err()).isEmpty();
        assertThat(json.objects("controllers"))
                .extracting(controller -> controller.text("controller"))
                .containsExactly("north", "south");
        assertThat(json.objects("controllers").get(0).objects("lines"))
                .extracting(line -> line.text("name"))
                .contains("north-clam-lid", "stop-loop", "north-reach");
    }
}
