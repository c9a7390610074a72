package slackwater.controller.cue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.model.Mode;
import slackwater.model.event.Event;

/** What starts a cue, and why it does not (S23). Scans come every 10 ms, the first at 0. */
class StartTest {

    private static LogicBench rise(final LogicBench bench, final String input, final long atMs) {
        return bench.until(atMs - LogicBench.SCAN_MS).active(input).step().inactive(input);
    }

    @Test
    void aRiseStartsACueOnce() {
        final LogicBench bench =
                Stage.greeting("starts = \"p\"").until(40).active("p").until(9_000);

        assertThat(bench.edges()).containsExactly("50 +a", "1050 -a");
        assertThat(bench.said(Event.CueStarted.class)).containsExactly("50: cue greet started by p");
        assertThat(bench.said(Event.CueEnded.class)).containsExactly("1050: cue greet ended: played");
    }

    @Test
    void whoStandsThereFromTheBeginningStartsNothing() {
        final LogicBench bench = Stage.greeting("starts = \"p\"").active("p");
        bench.mode(Mode.RESTING).step().mode(Mode.ARMED);

        assertThat(bench.until(1_000).edges()).isEmpty();
    }

    private static LogicBench all() {
        return Stage.greeting("starts = { all = [\"p\", \"q\", \"r\"], within = \"2 s\" }");
    }

    @Test
    void allWithinStartsWithTheLastOfThemInAnyOrder() {
        final LogicBench bench = rise(rise(rise(all(), "r", 100), "p", 900), "q", 2_090);

        assertThat(bench.said(Event.CueStarted.class)).containsExactly("2090: cue greet started by p and q and r");
    }

    @Test
    void allWithinIsTooLateAtItsTime() {
        final LogicBench bench = rise(rise(rise(all(), "r", 100), "p", 900), "q", 2_100);
        assertThat(bench.count(Event.CueStarted.class)).isZero();

        assertThat(rise(bench, "r", 2_890).said(Event.CueStarted.class))
                .as("the other two are still recent")
                .containsExactly("2890: cue greet started by p and q and r");
    }

    @Test
    void allInOneScanIsWithin() {
        assertThat(all().until(90).active("p").active("q").active("r").step().count(Event.CueStarted.class))
                .isOne();
    }

    @Test
    void aRiseCountsForOneStartOnly() {
        final LogicBench bench = rise(rise(rise(all(), "p", 100), "q", 200), "r", 300);

        assertThat(rise(bench, "r", 1_400).count(Event.CueStarted.class))
                .as("p and q were used by the first start")
                .isOne();
        assertThat(bench.count(Event.StartLost.class)).isZero();
    }

    @Test
    void aSecondRiseIsTheMoreRecentOne() {
        assertThat(rise(rise(rise(rise(all(), "p", 100), "p", 1_500), "q", 2_500), "r", 3_400)
                        .said(Event.CueStarted.class))
                .containsExactly("3400: cue greet started by p and q and r");
    }

    private static LogicBench order() {
        return Stage.greeting("starts = { order = [\"p\", \"q\"], within = \"5 s\" }");
    }

    @Test
    void theRightOrderStartsJustWithinItsTime() {
        assertThat(rise(rise(order(), "p", 100), "q", 5_090).said(Event.CueStarted.class))
                .containsExactly("5090: cue greet started by p and q");
    }

    @Test
    void theRightOrderIsTooLateAtItsTime() {
        assertThat(rise(rise(order(), "p", 100), "q", 5_100).count(Event.CueStarted.class))
                .isZero();
    }

    @Test
    void theWrongOrderStartsNothing() {
        assertThat(rise(rise(order(), "q", 100), "p", 200).count(Event.CueStarted.class))
                .isZero();
    }

    @Test
    void bothInOneScanHaveNoDirectionButTheFirstCountsForALaterSecond() {
        final LogicBench bench =
                order().until(90).active("p").active("q").step().inactive("p").inactive("q");
        assertThat(bench.count(Event.CueStarted.class)).isZero();

        assertThat(rise(bench, "q", 300).count(Event.CueStarted.class)).isOne();
    }

    @Test
    void oneWalkPastStartsOnce() {
        final LogicBench bench = rise(rise(rise(order(), "p", 100), "q", 200), "q", 1_500);

        assertThat(bench.count(Event.CueStarted.class)).isOne();
    }

    @Test
    void aStartWhileItPlaysIsLost() {
        final LogicBench bench = rise(rise(Stage.greeting("starts = \"p\""), "p", 100), "p", 1_090);

        assertThat(bench.said(Event.StartLost.class)).containsExactly("1090: cue greet not started: it is playing");
        assertThat(rise(bench, "p", 1_200).count(Event.CueStarted.class)).isEqualTo(2);
    }

    /** A step that ends in this scan still ended its cue after all starts were looked at. */
    @Test
    void aStartInTheScanInWhichItEndsIsLost() {
        final LogicBench bench = rise(rise(Stage.greeting("starts = \"p\""), "p", 100), "p", 1_100);

        assertThat(bench.said(Event.StartLost.class)).containsExactly("1100: cue greet not started: it is playing");
    }

    @Test
    void aHoldOffRefusesUntilJustBelowIt() {
        final LogicBench bench = rise(Stage.greeting("starts = \"p\"\nhold-off = \"30 s\""), "p", 100);

        assertThat(rise(bench, "p", 30_090).said(Event.StartLost.class))
                .containsExactly("30090: cue greet not started: hold-off for another 10 ms");
        assertThat(bench.count(Event.CueStarted.class)).isOne();
    }

    @Test
    void aHoldOffIsOverAtItsTimeFromTheLastStart() {
        final LogicBench bench = rise(Stage.greeting("starts = \"p\"\nhold-off = \"30 s\""), "p", 100);

        assertThat(rise(bench, "p", 30_100).said(Event.CueStarted.class))
                .containsExactly("100: cue greet started by p", "30100: cue greet started by p");
    }

    private static LogicBench greetedOnce() {
        return rise(Stage.greeting("starts = \"p\"\nagain-after-clear = \"15 s\""), "p", 100);
    }

    @Test
    void aGroupThatLingersNinetySecondsIsGreetedOnce() {
        final LogicBench bench = greetedOnce();
        for (long atMs = 5_000; atMs <= 90_000; atMs += 5_000) {
            rise(bench, "p", atMs);
        }

        assertThat(bench.count(Event.CueStarted.class)).isOne();
        assertThat(bench.said(Event.StartLost.class))
                .hasSize(18)
                .endsWith("90000: cue greet not started: they have been greeted and have not gone yet");
        assertThat(rise(bench, "p", 105_020).count(Event.CueStarted.class)).isEqualTo(2);
    }

    @Test
    void againAfterClearRefusesJustBelowItsTime() {
        final LogicBench bench = greetedOnce();

        assertThat(rise(bench, "p", 15_110).count(Event.CueStarted.class))
                .as("clear from 110 ms on, and not in this scan")
                .isOne();
    }

    @Test
    void againAfterClearPermitsOnceItsTimeHasPassed() {
        final LogicBench bench = greetedOnce();

        assertThat(rise(bench, "p", 15_120).said(Event.CueStarted.class))
                .as("clear from 110 ms to 15110 ms")
                .endsWith("15120: cue greet started by p")
                .hasSize(2);
    }

    @Test
    void anUnknownInputIsNotClear() {
        final LogicBench bench = greetedOnce().unknown("p").until(60_000).inactive("p");

        assertThat(rise(bench, "p", 75_000).count(Event.CueStarted.class)).isOne();
        assertThat(rise(bench, "p", 90_020).count(Event.CueStarted.class)).isEqualTo(2);
    }

    @Test
    void clearMeansEveryStartingInput() {
        final LogicBench bench =
                Stage.greeting("starts = { all = [\"p\", \"q\"], within = \"2 s\" }\nagain-after-clear = \"15 s\"");
        rise(bench.active("q"), "p", 10).active("q").until(40_000);
        bench.active("p")
                .step()
                .inactive("p")
                .inactive("q")
                .step()
                .active("p")
                .active("q")
                .step();

        assertThat(bench.count(Event.CueStarted.class)).isOne();
        assertThat(bench.count(Event.StartLost.class)).isOne();
    }

    @Test
    void eachGreetingMustBeFollowedByAClearTimeOfItsOwn() {
        final LogicBench bench = rise(greetedOnce(), "p", 20_000);
        assertThat(bench.count(Event.CueStarted.class)).isEqualTo(2);

        assertThat(rise(bench, "p", 30_000).count(Event.CueStarted.class)).isEqualTo(2);
    }

    @Test
    void theClearTimeGoesOnWhileTheZoneRests() {
        final LogicBench bench = greetedOnce().until(5_000).mode(Mode.RESTING).until(16_000);

        assertThat(rise(bench.mode(Mode.ARMED), "p", 16_020).count(Event.CueStarted.class))
                .isEqualTo(2);
    }

    @Test
    void whatIsNotProvidedIsSaid() {
        final String keys = "starts = \"p\"\nprovided = [\"q\", \"not r\"]";
        assertThat(rise(Stage.greeting(keys), "p", 100).said(Event.StartLost.class))
                .containsExactly("100: cue greet not started: not provided: q");
        assertThat(rise(Stage.greeting(keys).active("q").active("r"), "p", 100).said(Event.StartLost.class))
                .containsExactly("100: cue greet not started: not provided: not r");
        assertThat(rise(Stage.greeting(keys).active("q").unknown("r"), "p", 100).count(Event.StartLost.class))
                .as("unknown provides nothing")
                .isOne();
        assertThat(rise(Stage.greeting(keys).active("q"), "p", 100).count(Event.CueStarted.class))
                .isOne();
    }

    @Test
    void whatIsNotProvidedUsesUpNeitherHoldOffNorClearTime() {
        final LogicBench bench = rise(
                Stage.greeting("starts = \"p\"\nprovided = [\"q\"]\nhold-off = \"9 s\"\nagain-after-clear = \"9 s\""),
                "p",
                100);

        assertThat(rise(bench.active("q"), "p", 200).count(Event.CueStarted.class))
                .isOne();
    }

    @Test
    void nothingIsProvidedForAStepThatHasBegun() {
        final LogicBench bench =
                rise(Stage.greeting("starts = \"p\"\nprovided = [\"q\"]").active("q"), "p", 100);

        assertThat(bench.inactive("q").until(900).isOn("a")).isTrue();
    }

    @Test
    void nobodyIsGreetedWhileTheZoneMayNotAndNoGreetingIsLost() {
        final LogicBench bench = rise(Stage.greeting("starts = \"p\"").mode(Mode.RESTING), "p", 100);

        assertThat(bench.mode(Mode.ARMED).until(2_000).edges()).isEmpty();
        assertThat(bench.count(Event.StartLost.class)).isZero();
    }

    @Test
    void aZoneThatLeavesArmedEndsItsCuesWholeAndTheyDoNotResume() {
        final LogicBench bench =
                rise(Stage.greeting("starts = \"p\""), "p", 100).until(500);

        bench.mode(Mode.RESTING).step().mode(Mode.ARMED).until(5_000);
        assertThat(bench.edges()).containsExactly("100 +a", "510 -a");
        assertThat(bench.said(Event.CueEnded.class)).containsExactly("510: cue greet ended: its zone is not armed");
    }

    @Test
    void eachCueAsksItsOwnZone() {
        final LogicBench bench = LogicBench.of("""
                [zone.one]
                [zone.two]
                [input.p]
                kind = "motion"
                zone = "one"
                [output.a]
                kind = "lamp"
                zone = "one"
                [output.b]
                kind = "lamp"
                zone = "two"
                """, """
                [cue.first]
                zone = "one"
                starts = "p"
                steps = [ { energise = "a", for = "1 s" } ]
                [cue.second]
                zone = "two"
                starts = "p"
                steps = [ { energise = "b", for = "1 s" } ]
                """);
        bench.image().mayGreet[bench.plan().places().zone("two")] = false;

        assertThat(bench.active("p").step().said(Event.CueStarted.class)).containsExactly("0: cue first started by p");
    }
}
