package slackwater.controller.driver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.model.event.Event;

/** Limits of one output, kept whatever is asked (S11). Scans come every 10 ms, the first at 0. */
class OutputDriverTest {

    private static LogicBench lid(final String limits) {
        return LogicBench.of("""
                [output.lid]
                kind = "valve"
                on-power-loss = "spring-returns"
                """ + limits);
    }

    private static LogicBench lamp(final String limits) {
        return LogicBench.of("""
                [output.lamp]
                kind = "lamp"
                """ + limits);
    }

    @Test
    void aDemandJustShorterThanTheLongestOnIsPlayedWhole() {
        final LogicBench bench = lid("longest-on = \"2 s\"").wish("lid").until(1_980);
        bench.unwish("lid").until(5_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "1990 -lid");
        assertThat(bench.said(Event.Limited.class)).isEmpty();
    }

    @Test
    void aDemandExactlyAsLongAsTheLongestOnIsNotCutShort() {
        final LogicBench bench = lid("longest-on = \"2 s\"").wish("lid").until(1_990);
        bench.unwish("lid").until(5_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "2000 -lid");
        assertThat(bench.said(Event.Limited.class)).isEmpty();
        assertThat(bench.said(Event.Refused.class)).isEmpty();
    }

    @Test
    void aDemandOneScanLongerThanTheLongestOnEndsAtTheLongestOn() {
        final LogicBench bench = lid("longest-on = \"2 s\"").wish("lid").until(2_000);
        bench.unwish("lid").until(5_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "2000 -lid");
        assertThat(bench.said(Event.Limited.class)).containsExactly("2000: lid ended by its longest-on of 2 s");
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("2000: lid may not: \"own limits\" refuses because it has reached its longest-on of"
                        + " 2 s, energised for 2 s; clears when it is asked for anew");
    }

    @Test
    void aLongestOnBetweenTwoScansEndsAtTheLaterScan() {
        assertThat(lid("longest-on = \"25 ms\"").wish("lid").until(200).edges()).containsExactly("0 +lid", "30 -lid");
    }

    @Test
    void aStartJustBeforeTheEndOfTheShortestOffIsRefusedAndUsesUpTheDemandOfAValve() {
        final LogicBench bench =
                lid("longest-on = \"2 s\"\nshortest-off = \"1 s\"").wish("lid").until(90);
        bench.unwish("lid").until(1_080).wish("lid").step();

        assertThat(bench.lastMs()).isEqualTo(1_090);
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("1090: lid may not: \"own limits\" refuses because it has rested for less than its"
                        + " shortest-off of 1 s, resting for 990 ms; clears when 10 ms have passed");
        assertThat(bench.until(2_000).edges()).containsExactly("0 +lid", "100 -lid");
    }

    @Test
    void aStartAtTheEndOfTheShortestOffIsPermitted() {
        final LogicBench bench =
                lid("longest-on = \"2 s\"\nshortest-off = \"1 s\"").wish("lid").until(90);
        bench.unwish("lid").until(1_090).wish("lid").step();

        assertThat(bench.edges()).containsExactly("0 +lid", "100 -lid", "1100 +lid");
    }

    @Test
    void aLampWaitsForItsShortestOffAndThenLightsByItself() {
        final LogicBench bench = lamp("shortest-off = \"1 s\"")
                .wish("lamp")
                .until(90)
                .unwish("lamp")
                .step();
        bench.wish("lamp").until(2_000);

        assertThat(bench.edges()).containsExactly("0 +lamp", "100 -lamp", "1100 +lamp");
        assertThat(bench.count(Event.Refused.class)).isOne();
    }

    /** Starts at 10, 200 and 400 ms are three; the first leaves the window at 1010 ms. */
    @Test
    void startsWithinATimeSlideAndRefuseJustBelowTheLimit() {
        final LogicBench bench = lid("longest-on = \"2 s\"\nstarts = \"3 in 1 s\"");
        for (final long atMs : List.of(10L, 200L, 400L, 1_000L)) {
            bench.until(atMs - 10).wish("lid").step().unwish("lid").step();
        }

        assertThat(bench.edges().stream().filter(edge -> edge.contains("+")))
                .containsExactly("10 +lid", "200 +lid", "400 +lid");
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("1000: lid may not: \"own limits\" refuses because it has started 3 times within 1 s,"
                        + " in this state for 580 ms; clears when 10 ms have passed");
    }

    @Test
    void startsWithinATimeSlideAndPermitAtTheLimit() {
        final LogicBench bench = lid("longest-on = \"2 s\"\nstarts = \"3 in 1 s\"");
        for (final long atMs : List.of(10L, 200L, 400L, 1_010L, 1_190L, 1_210L)) {
            bench.until(atMs - 10).wish("lid").step().unwish("lid").step();
        }

        assertThat(bench.edges().stream().filter(edge -> edge.contains("+")))
                .containsExactly("10 +lid", "200 +lid", "400 +lid", "1010 +lid", "1210 +lid");
    }

    @Test
    void aLimitUsesADemandUpUntilItEnds() {
        final LogicBench bench = lamp("longest-on = \"1 s\"").wish("lamp").until(5_000);
        assertThat(bench.edges()).containsExactly("0 +lamp", "1000 -lamp");
        assertThat(bench.whyNot("lamp"))
                .containsExactly("lamp may not: \"own limits\" refuses because the demand has used up its longest-on of"
                        + " 1 s, at rest for 3.9 s; clears when it is asked for anew");

        bench.unwish("lamp").step();
        assertThat(bench.whyNot("lamp")).isEmpty();
        assertThat(bench.wish("lamp").step().isOn("lamp")).isTrue();
    }

    @Test
    void aNewStepRenewsADemandThatALimitHasUsedUp() {
        final LogicBench bench = lid("longest-on = \"1 s\"").wish("lid").until(2_990);
        bench.wish("lid").until(6_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "1000 -lid", "3000 +lid", "4000 -lid");
    }

    @Test
    void aStepThatBeginsWhileTheOutputIsEnergisedDoesNotLengthenItsLongestOn() {
        final LogicBench bench = lid("longest-on = \"1 s\"").wish("lid").until(490);
        bench.wish("lid").until(5_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "1000 -lid");
    }

    @Test
    void aLampWhoseDemandIsRenewedInEveryScanStillRestsAtItsLongestOn() {
        final LogicBench bench = lamp("longest-on = \"1 s\"\nshortest-off = \"3 s\"");
        while (bench.lastMs() < 4_500) {
            bench.wish("lamp").step();
        }

        assertThat(bench.edges()).containsExactly("0 +lamp", "1000 -lamp", "4000 +lamp");
    }

    @Test
    void aStepThatBeginsInTheVeryScanOfTheLimitIsUsedUpWithIt() {
        final LogicBench bench = lid("longest-on = \"1 s\"").wish("lid").until(990);
        bench.wish("lid").until(5_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "1000 -lid");
    }

    @Test
    void aNewStepInsideTheShortestOffAfterALimitIsRefusedWhole() {
        final LogicBench bench =
                lid("longest-on = \"1 s\"\nshortest-off = \"2 s\"").wish("lid").until(1_500);
        bench.wish("lid").until(9_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "1000 -lid");
    }

    private static LogicBench crab() {
        return LogicBench.of("""
                [output.crab]
                kind = "contact"
                on-power-loss = "stays"
                longest-on = "0.5 s"
                shortest-off = "1 s"
                run-time = "6 s"
                """);
    }

    @Test
    void aBoughtPropIsNotPulsedAgainWhileItRunsOn() {
        final LogicBench bench = crab().wish("crab").until(290).unwish("crab").step();
        bench.until(6_280).wish("crab").step();

        assertThat(bench.lastMs()).isEqualTo(6_290);
        assertThat(bench.edges()).containsExactly("0 +crab", "300 -crab");
        assertThat(bench.whyNot("crab"))
                .containsExactly("crab may not: \"own limits\" refuses because it has rested for less than its"
                        + " shortest-off of 6 s, resting for 5.9 s; clears when 10 ms have passed");
    }

    @Test
    void aBoughtPropIsPulsedAgainOnceItHasRunItsTime() {
        final LogicBench bench = crab().wish("crab").until(290).unwish("crab").step();
        bench.until(6_290).wish("crab").step();

        assertThat(bench.edges()).containsExactly("0 +crab", "300 -crab", "6300 +crab");
    }

    @Test
    void anOutputThatWasNeverAskedForIsWithinItsLimits() {
        final LogicBench bench =
                lid("longest-on = \"1 s\"\nstarts = \"1 in 1 min\"").step();

        assertThat(bench.whyNot("lid")).isEmpty();
        assertThat(bench.plan().drivers().observed(bench.run(), 0)).isEqualTo("it has been within its limits");
        assertThat(bench.plan().drivers().clearsWhen(bench.run(), 0)).isEqualTo("it is asked for anew");
    }

    @Test
    void restWithoutAskingRestsAtOnceAndCountsAsRest() {
        final LogicBench bench =
                lid("longest-on = \"9 s\"\nshortest-off = \"1 s\"").wish("lid").until(500);
        bench.plan().drivers().rest(bench.run(), 0);

        assertThat(bench.plan().drivers().mayEnergise(bench.run(), 0, false)).isFalse();
        assertThat(bench.plan().drivers().sinceNs(bench.run(), 0)).isEqualTo(500_000_000L);
        bench.step();
        assertThat(bench.isOn("lid")).isFalse();
        bench.unwish("lid").until(1_490).wish("lid").step();
        assertThat(bench.edges()).containsExactly("0 +lid", "510 -lid", "1500 +lid");
    }

    @Test
    void restWithoutAskingLeavesAnOutputAtRestAsItIs() {
        final LogicBench bench =
                lid("longest-on = \"9 s\"\nshortest-off = \"1 s\"").until(500);
        bench.plan().drivers().restAll(bench.run());

        assertThat(bench.plan().drivers().mayEnergise(bench.run(), 0, false)).isTrue();
        assertThat(bench.wish("lid").step().isOn("lid")).isTrue();
        bench.plan().drivers().restAll(bench.run());
        assertThat(bench.step().isOn("lid")).isFalse();
    }

    @Test
    void anAirSupplyWithoutALongestOnStaysAsLongAsItIsAsked() {
        final LogicBench bench = lamp("").wish("lamp").until(600_000);

        assertThat(bench.edges()).containsExactly("0 +lamp");
    }

    /** The checks refuse to build it; the driver must not read it as "no limit". */
    @Test
    void aLongestOnOfNothingIsALimit() {
        final LogicBench bench = lid("longest-on = \"0 s\"").wish("lid").until(1_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "10 -lid");
        assertThat(bench.said(Event.Limited.class)).containsExactly("10: lid ended by its longest-on of 0 ms");
    }
}
