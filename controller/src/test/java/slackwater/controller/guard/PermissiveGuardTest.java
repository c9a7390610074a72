package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.model.event.Event;

/** Permissives need proven views (S7), refuse with a whole text, and treat a stroke begun as the rig says (S1). */
class PermissiveGuardTest {

    private static LogicBench lid(final String begun) {
        return LogicBench.of("""
                [input.reach]
                kind = "beam"
                [input.air-ok]
                kind = "pressure"
                [output.lid]
                kind = "valve"
                on-power-loss = "spring-returns"
                longest-on = "2 s"
                [permissive.reach-clear]
                outputs = ["lid"]
                needs = ["not reach", "air-ok"]
                begun = "%s"
                """.formatted(begun)).inactive("reach").active("air-ok");
    }

    @Test
    void everyConditionProvenPermits() {
        assertThat(lid("rest").wish("lid").step().isOn("lid")).isTrue();
    }

    @Test
    void aConditionProvenWrongRefuses() {
        assertThat(lid("rest").active("reach").wish("lid").step().isOn("lid")).isFalse();
        assertThat(lid("rest").inactive("air-ok").wish("lid").step().isOn("lid"))
                .isFalse();
    }

    @Test
    void anUnknownInputIsNeitherClearNorAirEnough() {
        assertThat(lid("rest").unknown("reach").wish("lid").step().isOn("lid")).isFalse();
        assertThat(lid("rest").unknown("air-ok").wish("lid").step().isOn("lid")).isFalse();
    }

    @Test
    void theRefusalNamesTheFirstConditionThatIsNotProven() {
        final LogicBench bench = lid("rest").until(70).unknown("air-ok").step();

        assertThat(bench.whyNot("lid"))
                .containsExactly("lid may not: \"reach-clear\" refuses because air-ok is warming up for 80 ms;"
                        + " clears when air-ok is proven active");
        assertThat(bench.active("reach").whyNot("lid"))
                .containsExactly("lid may not: \"reach-clear\" refuses because reach is warming up for 80 ms;"
                        + " clears when reach is proven inactive");
    }

    @Test
    void aStrokeBegunGoesToRestAtOnceWhereTheRigSaysRest() {
        final LogicBench bench =
                lid("rest").wish("lid").until(300).active("reach").step();

        assertThat(bench.edges()).containsExactly("0 +lid", "310 -lid");
    }

    @Test
    void aStrokeBegunIsFinishedWhereTheRigSaysSoAndNoNewOneStarts() {
        final LogicBench bench = lid("finish").wish("lid").until(300).active("reach");
        bench.until(1_500).unwish("lid").step();
        assertThat(bench.edges()).containsExactly("0 +lid", "1510 -lid");

        bench.wish("lid").until(4_000);
        assertThat(bench.edges()).hasSize(2);
        assertThat(bench.inactive("reach").wish("lid").step().isOn("lid")).isTrue();
    }

    @Test
    void aStrokeThatIsFinishedStillEndsAtItsLongestOn() {
        final LogicBench bench =
                lid("finish").wish("lid").until(300).active("reach").until(5_000);

        assertThat(bench.edges()).containsExactly("0 +lid", "2000 -lid");
    }

    @Test
    void aRefusalIsSaidOnceForOneStepAndAgainForTheNext() {
        final LogicBench bench = lid("rest").active("reach").wish("lid").until(500);
        assertThat(bench.count(Event.Refused.class)).isOne();

        assertThat(bench.wish("lid").until(1_000).count(Event.Refused.class)).isEqualTo(2);
        assertThat(bench.unwish("lid").step().wish("lid").until(2_000).count(Event.Refused.class))
                .isEqualTo(3);
    }

    @Test
    void aLampIsRefusedInWordsOnceHoweverLongItWaits() {
        final LogicBench bench = LogicBench.of("""
                [input.dark]
                kind = "motion"
                [input.dry]
                kind = "motion"
                [output.lamp]
                kind = "lamp"
                [permissive.in-the-dark]
                outputs = ["lamp"]
                needs = ["dark"]
                [permissive.in-the-dry]
                outputs = ["lamp"]
                needs = ["dry"]
                """).active("dry").wish("lamp").until(500);
        assertThat(bench.count(Event.Refused.class)).isOne();

        assertThat(bench.active("dark").inactive("dry").until(900).said(Event.Refused.class))
                .as("another reason is news")
                .hasSize(2);
        assertThat(bench.active("dry").until(1_000).isOn("lamp")).isTrue();
        assertThat(bench.inactive("dry").until(1_100).count(Event.Refused.class))
                .as("the same reason after it was lit is news")
                .isEqualTo(3);
        assertThat(bench.unwish("lamp").until(1_200).wish("lamp").until(1_300).count(Event.Refused.class))
                .isEqualTo(4);
    }

    @Test
    void everyReasonIsListedWhetherOrNotItIsAskedFor() {
        final LogicBench bench = LogicBench.of("""
                [input.reach]
                kind = "beam"
                [input.hung]
                kind = "button"
                [output.jet]
                kind = "valve"
                on-power-loss = "spring-returns"
                longest-on = "2 s"
                current = "1 A"
                [output.lid]
                kind = "valve"
                on-power-loss = "spring-returns"
                longest-on = "2 s"
                shortest-off = "5 s"
                current = "1.5 A"
                [permissive.reach-clear]
                outputs = ["lid"]
                needs = ["not reach"]
                begun = "finish"
                [exclusion.one-bang]
                outputs = ["jet", "lid"]
                clear-after = "0.5 s"
                [load-limit.supply]
                outputs = ["jet", "lid"]
                limit = "2 A"
                """)
                .inactive("reach")
                .wish("lid")
                .step()
                .unwish("lid")
                .step();
        bench.until(1_000).wish("jet").step().active("reach").step();

        assertThat(bench.whyNot("lid"))
                .containsExactly(
                        "lid may not: \"own limits\" refuses because it has rested for less than its shortest-off of"
                                + " 5 s, resting for 1.0 s; clears when 3.9 s have passed",
                        "lid may not: \"reach-clear\" refuses because reach is warming up for 1.0 s;"
                                + " clears when reach is proven inactive",
                        "lid may not: \"one-bang\" refuses because jet has been energised for 10 ms;"
                                + " clears when jet has been at rest for 500 ms",
                        "lid may not: \"supply\" refuses because with it the load would have been 2.50 A of 2.00 A"
                                + " for 10 ms; clears when others are at rest");
        assertThat(bench.whyNot("jet")).isEmpty();
    }

    private static LogicBench jet() {
        return LogicBench.of("""
                [output.jet]
                kind = "valve"
                on-power-loss = "spring-returns"
                longest-on = "9 s"
                """);
    }

    @Test
    void aDemandThatNoStepBeganMovesNothing() {
        assertThat(jet().hold("jet").until(1_000).edges()).isEmpty();
    }

    @Test
    void aStepThatBeganInAnEarlierDemandIsNotKeptForALaterOne() {
        final LogicBench bench =
                jet().wish("jet").step().wish("jet").step().unwish("jet").step();

        assertThat(bench.hold("jet").until(1_000).edges()).containsExactly("0 +jet", "20 -jet");
    }

    @Test
    void aStrokeThatWasRestedWithoutAskingDoesNotComeBackWhileItsDemandHolds() {
        final LogicBench bench = jet().wish("jet").until(500);
        bench.plan().drivers().restAll(bench.run());

        assertThat(bench.until(5_000).edges()).containsExactly("0 +jet", "510 -jet");
    }

    /** As after a failed scan (S9), but with nothing latched that would refuse it. */
    @Test
    void aStrokeWhosePinsWereRestedIsNotStartedAgainByTheSameDemand() {
        final LogicBench bench = jet().wish("jet").until(500);
        bench.plan().drivers().restAll(bench.run());
        bench.pinsSay("jet", false);

        assertThat(bench.until(5_000).edges()).containsExactly("0 +jet");
    }

    @Test
    void aLampRefusedInALaterDemandSaysSoAgain() {
        final LogicBench bench = LogicBench.of("""
                [input.dark]
                kind = "motion"
                [output.lamp]
                kind = "lamp"
                [permissive.in-the-dark]
                outputs = ["lamp"]
                needs = ["dark"]
                """)
                .hold("lamp")
                .until(100)
                .unwish("lamp")
                .step()
                .hold("lamp")
                .until(200);

        assertThat(bench.count(Event.Refused.class)).isEqualTo(2);
    }
}
