package slackwater.controller.cue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.model.event.Event;

/** Higher priority, then the order of the file, pre-empts; the loser ends whole and never resumes (S11). */
class PreemptionTest {
    private static final String RIG = Stage.TABLES + """
            [output.lid]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "2 s"
            """;
    private static final String LONG = """
            [cue.low]
            priority = %d
            starts = "p"
            steps = [
              { energise = ["a", "lid"], for = "0.3 s" },
              { at = "0.1 s", energise = "b", for = "0.1 s", blink = "40 ms" },
              { pause = "0.1 s" },
              { await = "r", at-most = "0.3 s", else = "go-on" },
              { energise = ["c", "lid"], for = "0.2 s" },
              { one-of = [ [ { energise = "a", for = "0.2 s" } ], [ { energise = "b", for = "0.2 s" } ] ] },
              { energise = "c", for = "0.2 s" },
            ]
            """;
    private static final String BANG = """
            [cue.high]
            priority = %d
            starts = "q"
            steps = [ { pause = "0.1 s" }, { energise = "d", for = "0.5 s" }, { energise = "lid", for = "0.2 s" } ]
            """;

    private static LogicBench bench(final String show) {
        return LogicBench.of(RIG, show).inactive("p").inactive("q").inactive("r");
    }

    @Test
    void thePlayingOneEndsWholeWhicheverStepItIsAt() {
        final String show = LONG.formatted(1) + BANG.formatted(2);
        for (long atMs = 0; atMs < 1_200; atMs += LogicBench.SCAN_MS) {
            final LogicBench bench = bench(show).until(90).active("p");
            bench.until(100 + atMs).active("q").step();

            assertThat(bench.said(Event.CueEnded.class))
                    .as("pre-empted at %d ms", atMs)
                    .hasSize(1)
                    .allMatch(text -> text.endsWith("cue low ended: pre-empted by high"));
            assertThat(bench.on()).as("at rest in the very scan, %d ms", atMs).isEmpty();
            final int before = bench.edges().size();
            bench.until(9_000);
            assertThat(bench.edges().subList(before, bench.edges().size()))
                    .as("only the winner plays on, %d ms", atMs)
                    .containsExactly(
                            210 + atMs + " +d", 710 + atMs + " -d", 710 + atMs + " +lid", 910 + atMs + " -lid");
        }
    }

    @Test
    void thePlayingOneIsWhole() {
        final LogicBench bench = bench(LONG.formatted(1) + BANG.formatted(2))
                .until(90)
                .active("p")
                .until(9_000);

        assertThat(bench.said(Event.CueEnded.class))
                .as("1.2 s, so that the moments above were all while it played")
                .containsExactly("1300: cue low ended: played");
    }

    @Test
    void whoPlaysIsNotPreEmptedByALowerOne() {
        final LogicBench bench = bench(LONG.formatted(1) + BANG.formatted(2))
                .until(90)
                .active("q")
                .until(300);

        bench.active("p").until(5_000);
        assertThat(bench.said(Event.StartLost.class)).containsExactly("310: cue low not started: high is playing");
        assertThat(bench.edges()).containsExactly("200 +d", "700 -d", "700 +lid", "900 -lid");
    }

    @Test
    void atEqualPriorityTheEarlierInTheFilePreEmpts() {
        final LogicBench earlierBang =
                bench(BANG.formatted(2) + LONG.formatted(2)).until(90).active("p");
        earlierBang.until(300).active("q").until(5_000);
        assertThat(earlierBang.said(Event.CueEnded.class))
                .containsExactly("310: cue low ended: pre-empted by high", "1110: cue high ended: played");

        final LogicBench laterBang =
                bench(LONG.formatted(2) + BANG.formatted(2)).until(90).active("p");
        laterBang.until(300).active("q").until(5_000);
        assertThat(laterBang.said(Event.StartLost.class)).containsExactly("310: cue high not started: low is playing");
    }

    @Test
    void bothInOneScanIsTheHigherOneWhateverTheOrderOfTheFile() {
        for (final String show :
                new String[] {LONG.formatted(1) + BANG.formatted(2), BANG.formatted(2) + LONG.formatted(1)}) {
            final LogicBench bench =
                    bench(show).until(90).active("p").active("q").step();

            assertThat(bench.said(Event.CueStarted.class)).containsExactly("100: cue high started by q");
            assertThat(bench.said(Event.StartLost.class)).containsExactly("100: cue low not started: high is playing");
        }
    }

    @Test
    void cuesThatShareNoOutputPlayTogether() {
        final LogicBench bench = bench("""
                [cue.one]
                priority = 9
                starts = "p"
                steps = [ { energise = "a", for = "1 s" } ]
                [cue.two]
                starts = "p"
                steps = [ { energise = ["b", "c"], for = "1 s" } ]
                """).until(90).active("p").step();

        assertThat(bench.on()).containsExactly("a", "b", "c");
        assertThat(bench.count(Event.StartLost.class)).isZero();
    }

    @Test
    void anOutputInAChoiceThatIsNotPlayedIsSharedAllTheSame() {
        final LogicBench bench =
                bench("""
                [cue.one]
                priority = 9
                starts = "p"
                steps = [ { energise = "a", for = "1 s" } ]
                [cue.two]
                starts = "q"
                steps = [
                  { await = "r", at-most = "5 s", else = "end" },
                  { one-of = [ [ { pause = "1 s" } ], [ { energise = ["d", "a"], for = "1 s" } ] ] },
                ]
                """).until(90).active("q").until(200).active("p").step();

        assertThat(bench.said(Event.CueEnded.class)).containsExactly("210: cue two ended: pre-empted by one");
    }

    @Test
    void aStartThatIsNotProvidedPreEmptsNobody() {
        final LogicBench bench = bench(LONG.formatted(1) + BANG.formatted(2) + "provided = [\"r\"]\n")
                .until(90)
                .active("p")
                .until(200)
                .active("q")
                .step();

        assertThat(bench.count(Event.CueEnded.class)).isZero();
        assertThat(bench.isOn("a")).isTrue();
    }

    @Test
    void aValveThatTheWinnerTakesOverKeepsItsOneLongestOn() {
        final LogicBench bench =
                bench("""
                [cue.high]
                priority = 2
                starts = "q"
                steps = [ { energise = "lid", for = "5 s" } ]
                [cue.low]
                priority = 1
                starts = "p"
                steps = [ { energise = "lid", for = "5 s" } ]
                """).until(90).active("p").until(1_590).active("q").until(9_000);

        assertThat(bench.edges()).containsExactly("100 +lid", "2100 -lid");
    }

    @Test
    void aLostOneMayBeStartedAnewAfterwards() {
        final LogicBench bench =
                bench(LONG.formatted(1) + BANG.formatted(2)).until(90).active("p");
        bench.until(400)
                .active("q")
                .until(3_000)
                .inactive("p")
                .until(3_990)
                .active("p")
                .step();

        assertThat(bench.edges()).endsWith("4000 +a", "4000 +lid");
    }
}
