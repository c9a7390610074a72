package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The referee's harm rules come from what stands and moves in the yard, not from what the rig asks for (S20). So an
 * interlock that nobody wrote shows in the first evening: a reason for leaving it out convinces the checks, not the yard.
 */
class MissingInterlockTest {
    /** A lid over the path itself: 4 kg, half a metre in 0.3 s, far above the 1.69 J of handbook 1.11 case 11. */
    private static final String YARD = """
            [way]
            points = [["0 m", "0 m"], ["20 m", "0 m"]]
            width = "1.5 m"
            groups-per-hour = 60

            [controller.porch]
            board = "pi-4"

            [input.path]
            kind = "motion"
            warm-up = "60 s"
            at = ["9 m", "2 m"]
            facing = "270 deg"
            angle = "60 deg"
            range = "5 m"

            [output.lid]
            kind = "valve"
            on-power-loss = "spring-returns"
            on-air-loss = "spring-returns"
            longest-on = "2 s"
            at = ["10 m", "0 m"]
            reach = "1 m"
            moving-mass = "4 kg"
            travel = "0.5 m"
            strokes-in = "0.3 s"
            returns-in = "0.3 s"
            """;

    private static final String SHOW = """
            [cue.greet]
            starts = "path"
            again-after-clear = "5 s"
            steps = [
              { energise = "lid", for = "1.5 s" },
            ]
            """;

    private static final String LEFT_OUT = "unguarded = \"they will step back\"\n";

    /** A second sensor sees the whole reach; as long as it sees anybody, no stroke begins. */
    private static final String WATCHED = """

            [input.watch]
            kind = "motion"
            warm-up = "60 s"
            at = ["10 m", "3 m"]
            facing = "270 deg"
            angle = "90 deg"
            range = "6 m"
            reach-of = ["lid"]

            [permissive.reach-clear]
            outputs = ["lid"]
            needs = ["not watch"]
            begun = "finish"
            """;

    @TempDir
    private Path folder;

    @Test
    void anInterlockThatWasLeftOutShowsAsSomebodyStruck() throws IOException {
        final Path yard = Cli.rig(folder, YARD + LEFT_OUT, SHOW);

        assertThat(Cli.run("check", yard).isGood().out())
                .as("the checks take the reason, and warn")
                .contains("reach-unwatched");
        final Cli.Outcome outcome = Cli.run("simulate", yard, "--hours", 1);

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).contains("lid: moved-into-person, ", "somebody in the reach since before it started");
    }

    @Test
    void aScriptReadsTheRuleTheOutputTheMomentAndWhatHappened() throws IOException {
        final Path yard = Cli.rig(folder, YARD + LEFT_OUT, SHOW);

        final Cli.Outcome outcome = Cli.run("simulate", yard, "--hours", 1, "--json");
        final Json json = Json.only(outcome.out());

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(json.number("nearMisses")).isPositive();
        assertThat(json.objects("violations")).isNotEmpty().allSatisfy(violation -> {
            assertThat(violation.fields().keySet()).containsExactly("rule", "output", "at", "detail");
            assertThat(violation.text("rule")).isEqualTo("moved-into-person");
            assertThat(violation.text("output")).isEqualTo("lid");
            assertThat(violation.number("at")).isBetween(60.0, 3600.0);
            assertThat(violation.text("detail")).contains(" J with somebody in the reach");
        });
    }

    @Test
    void theSameYardWithTheInterlockStrikesNobody() throws IOException {
        final Path yard = Cli.rig(folder, YARD + WATCHED, SHOW);

        final Cli.Outcome outcome = Cli.run("simulate", yard, "--hours", 1);

        assertThat(outcome.out()).contains("none: every rule held");
        assertThat(outcome.exitCode()).isZero();
    }
}
