package slackwater.controller.cue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.image.Places;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.RigText;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Mode;
import slackwater.model.event.Event;

/** Steps come exactly when the show says, to the scan. Each cue starts at 100 ms. */
class StepsTest {

    private static LogicBench play(final String steps) {
        return Stage.steps(steps).until(90).active("p");
    }

    @Test
    void aStepWithoutATimeFollowsTheOneBefore() {
        assertThat(play("""
                { energise = "a", for = "0.5 s" },
                { energise = "b", for = "0.25 s" },
                { energise = ["c", "d"], for = "0.1 s" },
                """).until(5_000).edges())
                .containsExactly("100 +a", "600 -a", "600 +b", "850 -b", "850 +c", "850 +d", "950 -c", "950 -d");
    }

    @Test
    void aStepWithATimeCountsFromTheStart() {
        final LogicBench bench = play("""
                { energise = "a", for = "0.5 s" },
                { at = "0.2 s", energise = "b", for = "1 s" },
                { at = "0 s", energise = "c", for = "0.1 s" },
                { energise = "d", for = "0.1 s" },
                """).until(5_000);

        assertThat(bench.edges())
                .containsExactly("100 +a", "100 +c", "200 -c", "200 +d", "300 -d", "300 +b", "600 -a", "1300 -b");
        assertThat(bench.said(Event.CueEnded.class))
                .as("with the last end, not with the last step")
                .containsExactly("1300: cue greet ended: played");
    }

    @Test
    void aPauseIsATimeInWhichNothingIsWished() {
        assertThat(play("""
                { pause = "0.3 s" },
                { energise = "a", for = "0.1 s" },
                { pause = "1 s" },
                { energise = "b", for = "0.1 s" },
                { pause = "2 s" },
                """).until(9_000).edges()).containsExactly("400 +a", "500 -a", "1500 +b", "1600 -b");
    }

    @Test
    void aLastPauseBelongsToTheCue() {
        assertThat(play("{ pause = \"2 s\" },").until(9_000).said(Event.CueEnded.class))
                .containsExactly("2100: cue greet ended: played");
    }

    @Test
    void aTimeBetweenTwoScansIsTheLaterScan() {
        assertThat(play("{ at = \"101 ms\", energise = \"a\", for = \"22 ms\" },")
                        .until(900)
                        .edges())
                .containsExactly("210 +a", "230 -a");
    }

    private static final String WAIT = """
            { energise = "a", for = "0.5 s" },
            { await = "q", at-most = "6 s", else = "%s" },
            { energise = "b", for = "0.5 s" },
            """;

    @Test
    void anAwaitGoesOnWithTheScanInWhichItIsProven() {
        assertThat(play(WAIT.formatted("end"))
                        .until(1_990)
                        .active("q")
                        .until(9_000)
                        .edges())
                .containsExactly("100 +a", "600 -a", "2000 +b", "2500 -b");
    }

    @Test
    void anAwaitThatIsProvenAlreadyTakesNoTime() {
        assertThat(play(WAIT.formatted("end")).active("q").until(9_000).edges())
                .containsExactly("100 +a", "600 -a", "600 +b", "1100 -b");
    }

    @Test
    void anAwaitIsSatisfiedJustBelowItsTime() {
        assertThat(play(WAIT.formatted("end"))
                        .until(6_580)
                        .active("q")
                        .until(9_000)
                        .edges())
                .endsWith("6590 +b", "7090 -b");
    }

    @Test
    void anAwaitThatEndsBreaksOffAtItsTime() {
        final LogicBench bench = play(WAIT.formatted("end")).until(9_000);

        assertThat(bench.edges()).containsExactly("100 +a", "600 -a");
        assertThat(bench.said(Event.CueEnded.class)).containsExactly("6600: cue greet ended: played");
    }

    @Test
    void anAwaitThatGoesOnDoesSoAtItsTime() {
        final LogicBench bench = play(WAIT.formatted("go-on")).until(6_590);
        assertThat(bench.edges()).containsExactly("100 +a", "600 -a");

        assertThat(bench.until(9_000).edges()).endsWith("6600 +b", "7100 -b");
    }

    @Test
    void whoComesInTheVeryScanOfTheTimeIsStillInTime() {
        assertThat(play(WAIT.formatted("end"))
                        .until(6_590)
                        .active("q")
                        .until(9_000)
                        .edges())
                .endsWith("6600 +b", "7100 -b");
    }

    @Test
    void anAwaitMayWaitForSomebodyToGo() {
        final LogicBench bench = play(WAIT.replace("\"q\"", "\"not q\"").formatted("end"));
        assertThat(bench.active("q").until(2_000).unknown("q").until(3_990).edges())
                .as("unknown is not gone")
                .containsExactly("100 +a", "600 -a");
        assertThat(bench.inactive("q").until(5_000).edges()).endsWith("4000 +b", "4500 -b");
    }

    @Test
    void timesAfterAnAwaitCountFromItsEnd() {
        assertThat(play("""
                { await = "q", at-most = "6 s", else = "end" },
                { at = "0.2 s", energise = "b", for = "0.5 s" },
                """).until(990).active("q").until(9_000).edges()).containsExactly("1200 +b", "1700 -b");
    }

    @Test
    void aCueBeginsFromItsFirstStepAgainAfterItBrokeOff() {
        final LogicBench bench = play(WAIT.formatted("end")).until(7_000).inactive("p");
        bench.until(7_990).active("p").until(9_500).active("q").until(12_000);

        assertThat(bench.edges()).containsExactly("100 +a", "600 -a", "8000 +a", "8500 -a", "9510 +b", "10010 -b");
    }

    @Test
    void aLampBlinksInHalvesOfItsPeriod() {
        assertThat(play("{ energise = \"a\", for = \"2.2 s\", blink = \"1 s\" },")
                        .until(9_000)
                        .edges())
                .containsExactly("100 +a", "600 -a", "1100 +a", "1600 -a", "2100 +a", "2300 -a");
    }

    @Test
    void aSecondPlayingBlinksFromTheBrightHalfAgain() {
        final LogicBench bench =
                play("{ energise = \"a\", for = \"0.7 s\", blink = \"1 s\" },").until(1_000);
        bench.inactive("p").until(1_990).active("p").until(4_000);

        assertThat(bench.edges()).containsExactly("100 +a", "600 -a", "2000 +a", "2500 -a");
    }

    /** Each brightening is a step's start, so a strobe that blinks is renewed with each (S11). */
    @Test
    void eachBrighteningIsNewAndTheRestOfItIsNot() {
        final LogicBench bench = play("{ energise = \"a\", for = \"1 s\", blink = \"0.2 s\" },");
        final StringBuilder seen = new StringBuilder();
        for (int scan = 0; scan < 42; scan++) {
            bench.step();
            final int a = bench.plan().places().output("a");
            seen.append(bench.image().renewed[a] ? '!' : bench.image().demand[a] ? '-' : '.');
        }
        assertThat(seen.toString()).isEqualTo("!---------..........!---------..........!-");
    }

    @Test
    void aSteadyStepIsNewInItsFirstScanOnly() {
        final LogicBench bench = play("{ energise = \"a\", for = \"40 ms\" },");
        final StringBuilder seen = new StringBuilder();
        for (int scan = 0; scan < 6; scan++) {
            bench.step();
            final int a = bench.plan().places().output("a");
            seen.append(bench.image().renewed[a] ? '!' : bench.image().demand[a] ? '-' : '.');
        }
        assertThat(seen.toString()).isEqualTo("!---..");
    }

    @Test
    void stepsBeforeAOneOfArePlayedBeforeIt() {
        assertThat(play("""
                { energise = "a", for = "0.2 s" },
                { one-of = [ [ { energise = "b", for = "0.2 s" } ] ] },
                { energise = "c", for = "0.2 s" },
                """).until(5_000).edges())
                .containsExactly("100 +a", "300 -a", "300 +b", "500 -b", "500 +c", "700 -c");
    }

    private static final String EVERYTHING = """
            { energise = "a", for = "0.3 s", blink = "0.1 s" },
            { await = "q", at-most = "0.3 s", else = "%s" },
            { one-of = [ [ { energise = "b", for = "0.3 s", blink = "0.1 s" } ] ] },
            """;

    /** What is left of the cue in the run, but for its count of starts and for what its next start sets anew. */
    private static List<String> remains(final LogicBench bench) {
        return bench.plan().describe(bench.run()).stream()
                .filter(line -> line.startsWith("cue.greet."))
                .filter(line -> !line.matches("cue\\.greet\\.(starts?|hold-off|.*\\.(begun|dark)|choice\\.\\d+) .*"))
                .filter(line -> !line.endsWith(" = 0") && !line.endsWith(" due never"))
                .toList();
    }

    /** A search of all states (S21) would otherwise tell apart what plays on alike. */
    @Test
    void aCueThatHasEndedLeavesNothingBehindHoweverItEnded() {
        for (final String end : new String[] {"go-on", "end"}) {
            final LogicBench bench = play(EVERYTHING.formatted(end)).until(200);
            assertThat(remains(bench)).isNotEmpty();
            assertThat(remains(bench.until(3_000))).as("played, %s", end).isEmpty();
        }
        for (long atMs = 110; atMs < 900; atMs += 50) {
            final LogicBench bench = play(EVERYTHING.formatted("go-on")).until(atMs);
            assertThat(remains(bench.mode(Mode.RESTING).step()))
                    .as("ended at %d ms", atMs)
                    .isEmpty();
        }
    }

    /** Each step asks for a number of its own; the numbers stay, so that a recorded evening plays again. */
    @Test
    void noTwoStepsShareADraw() {
        final RigText text = RigText.of(RigText.yard(Stage.TABLES), """
                [cue.greet]
                starts = "p"
                steps = [
                  { energise = "a", for = "10 ms", vary = "10 ms" },
                  { pause = "10 ms", vary = "10 ms" },
                  { one-of = [
                    [ { pause = "10 ms", vary = "10 ms" } ],
                    [ { pause = "10 ms" }, { energise = "b", for = "10 ms", vary = "10 ms" } ],
                  ] },
                  { pause = "10 ms", vary = "10 ms" },
                ]
                """);
        final Places places = Places.of(text.rig(), "yard");
        final Layout layout = new Layout();
        final List<Integer> asked = new ArrayList<>();
        final StepsPlaying playing =
                new StepsPlaying(text.show().cues().get(0), places, layout, (most, start, step) -> {
                    asked.add(step);
                    return most == 1 ? 1 : 0;
                });
        final RunState run = layout.newRun();
        final Asking asking = CueStage.asking(places.newImage());
        run.begin(0);
        playing.begin(run, 1);
        for (long scan = 1; playing.goOn(run, asking); scan++) {
            run.begin(scan * 10_000_000L);
        }

        assertThat(asked).containsExactly(1_001_000, 1_001_001, 3_000_000, 3_002_001, 4_001_000);
    }
}
