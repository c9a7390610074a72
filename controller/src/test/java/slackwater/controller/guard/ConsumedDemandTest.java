package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.controller.plan.ScanBench;
import slackwater.model.event.Event;

/** A refusal or a limit uses a demand up; only a new step renews it (S11). Whole scans, as on the board. */
class ConsumedDemandTest {
    private static final String RIG = """
            [input.key]
            kind = "key"
            use = "arm"
            active-after = "0 s"
            inactive-after = "0 s"
            [input.path]
            kind = "motion"
            active-after = "0 s"
            inactive-after = "0 s"
            [input.gate]
            kind = "motion"
            active-after = "0 s"
            inactive-after = "0 s"
            [output.thing]
            kind = "%s"
            %s
            [permissive.gate-shut]
            outputs = ["thing"]
            needs = ["gate"]
            begun = "rest"
            """;
    private static final String HOLD = """
            [cue.hold]
            starts = "path"
            steps = [ { energise = "thing", for = "60 s" } ]
            """;

    private static ScanBench armed(final String kind, final String keys, final String show) {
        return ScanBench.of(RIG.formatted(kind, keys), show)
                .high("gate")
                .step()
                .high("key")
                .step();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            valve   | on-power-loss = "spring-returns"
            pump    |
            mister  |
            release | on-power-loss = "stays"
            strobe  | one-flash-per-pulse = true
            contact | run-time = "1 s"
            """)
    void aDemandHeldForAMinuteMakesOneStrokeAtMostAsLongAsTheLongestOn(final String kind, final String keys) {
        final ScanBench bench = armed(kind, "longest-on = \"2 s\"\n" + (keys == null ? "" : keys), HOLD);

        bench.high("path").until(61_000);
        assertThat(bench.said(Event.Switched.class)).containsExactly("20: thing energised", "2020: thing at rest");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "valve/on-power-loss = \"spring-returns\"",
                "pump/",
                "mister/",
                "release/on-power-loss = \"stays\"",
                "strobe/one-flash-per-pulse = true",
                "contact/run-time = \"1 s\""
            })
    void aPermissiveThatFlickersWhileTheDemandHoldsDoesNotFireAgain(final String kindAndKeys) {
        final String[] parts = kindAndKeys.split("/", 2);
        final ScanBench bench =
                armed(parts[0], "longest-on = \"40 s\"\n" + parts[1], HOLD).high("path");
        for (int i = 0; i < 20; i++) {
            bench.until(bench.nextMs() + 1_000).low("gate").step().high("gate");
        }

        assertThat(bench.until(61_000).said(Event.Switched.class))
                .containsExactly("20: thing energised", "1030: thing at rest");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lamp/", "fan/", "sounder/longest-on = \"50 s\""})
    void whatMayComeBackDoesWhenItsPermissiveDoes(final String kindAndKeys) {
        final String[] parts = kindAndKeys.split("/", 2);
        final ScanBench bench = armed(parts[0], parts[1], HOLD).high("path").until(1_000);

        bench.low("gate").until(2_000);
        assertThat(bench.isHigh("thing")).isFalse();
        assertThat(bench.high("gate").step().isHigh("thing")).isTrue();
        assertThat(bench.strokes("thing")).isEqualTo(2);
    }

    @Test
    void aDemandThatIsRefusedAtItsStartIsUsedUpAlthoughTheWayIsClearAScanLater() {
        final ScanBench bench = armed("valve", "longest-on = \"2 s\"\non-power-loss = \"stays\"", HOLD);

        bench.low("gate").high("path").step().high("gate").until(61_000);
        assertThat(bench.strokes("thing")).isZero();
    }

    /** A later step of the same cue that overlaps the held one begins anew. */
    @Test
    void anOverlappingStepRenewsWhatARefusalHasUsedUp() {
        final ScanBench bench = armed("valve", "longest-on = \"9 s\"\non-power-loss = \"stays\"", """
                [cue.hold]
                starts = "path"
                steps = [
                  { energise = "thing", for = "5 s" },
                  { at = "2 s", energise = "thing", for = "2 s" },
                ]
                """);

        bench.low("gate").high("path").step().high("gate").until(9_000);
        assertThat(bench.said(Event.Switched.class))
                .as("from the second step's start; the held demand of the first then carries it on")
                .containsExactly("2020: thing energised", "5020: thing at rest");
    }

    @Test
    void anOverlappingStepThatBeginsWhileTheOutputIsEnergisedIsNotKeptForLater() {
        final ScanBench bench = armed("valve", "longest-on = \"2 s\"\non-power-loss = \"stays\"", """
                [cue.hold]
                starts = "path"
                steps = [
                  { energise = "thing", for = "30 s" },
                  { at = "1 s", energise = "thing", for = "20 s" },
                ]
                """)
                .high("path");

        assertThat(bench.until(40_000).said(Event.Switched.class))
                .containsExactly("20: thing energised", "2020: thing at rest");
    }

    @Test
    void anOverlappingStepThatBeginsWhileEnergisedIsUsedUpByAFlickerToo() {
        final ScanBench bench = armed("valve", "longest-on = \"9 s\"\non-power-loss = \"stays\"", """
                [cue.hold]
                starts = "path"
                steps = [
                  { energise = "thing", for = "8 s" },
                  { at = "1 s", energise = "thing", for = "6 s" },
                ]
                """)
                .high("path")
                .until(3_000);

        assertThat(bench.low("gate").step().high("gate").until(9_000).strokes("thing"))
                .isOne();
    }

    @Test
    void aStandDownAndALaterArmDoNotResumeWhatWasAskedFor() {
        final ScanBench bench = armed("valve", "longest-on = \"9 s\"\non-power-loss = \"stays\"", HOLD);
        bench.high("path").until(1_000).low("key").step();

        assertThat(bench.isHigh("thing")).isFalse();
        assertThat(bench.said(Event.CueEnded.class)).containsExactly("1010: cue hold ended: its zone is not armed");
        assertThat(bench.high("key").until(61_000).strokes("thing")).isOne();
    }
}
