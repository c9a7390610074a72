package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.model.event.Event;

/** At most one at a time, judged in the order of the rig against what is (S12). */
class ExclusionGuardTest {
    private static final String PAIR = """
            [input.air-ok]
            kind = "pressure"
            [output.lid]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "9 s"
            shortest-off = "3 s"
            [output.jet]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "9 s"
            [exclusion.one-bang]
            outputs = ["jet", "lid"]
            clear-after = "0.5 s"
            """;

    private static LogicBench pair() {
        return LogicBench.of(PAIR);
    }

    @Test
    void oneStartsWhereTheOtherRests() {
        assertThat(pair().wish("jet").step().on()).containsExactly("jet");
    }

    @Test
    void theOtherEnergisedRefuses() {
        final LogicBench bench = pair().wish("jet").until(200).wish("lid").until(400);

        assertThat(bench.on()).containsExactly("jet");
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("210: lid may not: \"one-bang\" refuses because jet has been energised for 210 ms;"
                        + " clears when jet has been at rest for 500 ms");
    }

    @Test
    void bothInOneScanIsTheFirstInTheOrderOfTheRigWhateverTheOrderInTheInterlock() {
        final LogicBench bench = pair().until(3_000).wish("jet", "lid").until(4_000);

        assertThat(bench.edges()).containsExactly("3010 +lid");
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("3010: jet may not: \"one-bang\" refuses because lid has been energised for 0 ms;"
                        + " clears when lid has been at rest for 500 ms");
    }

    @Test
    void theOtherCountsUntilJustBeforeItsClearTime() {
        final LogicBench bench = pair().wish("jet").until(90).unwish("jet").step();
        bench.until(580).wish("lid").step();

        assertThat(bench.lastMs()).isEqualTo(590);
        assertThat(bench.edges()).containsExactly("0 +jet", "100 -jet");
        assertThat(bench.whyNot("lid"))
                .containsExactly("lid may not: \"one-bang\" refuses because jet has not been clear long enough, begun"
                        + " for 590 ms; clears when jet has been at rest for 500 ms");
    }

    @Test
    void theOtherIsClearAtItsClearTime() {
        final LogicBench bench = pair().wish("jet").until(90).unwish("jet").step();
        bench.until(590).wish("lid").step();

        assertThat(bench.edges()).containsExactly("0 +jet", "100 -jet", "600 +lid");
    }

    @Test
    void aMemberIsNotKeptOffByItsOwnClearTime() {
        final LogicBench bench =
                pair().wish("jet").until(90).unwish("jet").step().wish("jet").step();

        assertThat(bench.edges()).containsExactly("0 +jet", "100 -jet", "110 +jet");
    }

    @Test
    void aMemberThatStartsAgainWithinItsClearTimeCountsFromItsLastRest() {
        final LogicBench bench =
                pair().wish("jet").until(90).unwish("jet").step().wish("jet").until(290);
        bench.unwish("jet").step().until(780).wish("lid").step();
        assertThat(bench.on()).isEmpty();

        bench.unwish("lid").wish("lid").step();
        assertThat(bench.edges()).endsWith("300 -jet", "800 +lid");
    }

    @Test
    void aWinnerRefusedByItsOwnDriverBlocksNobody() {
        final LogicBench bench = pair().wish("lid").step().unwish("lid").step();
        bench.until(1_000).wish("lid", "jet").step();

        assertThat(bench.on()).as("the lid rests for 3 s by its own limit").containsExactly("jet");
    }

    @Test
    void aWinnerRefusedByALaterInterlockBlocksNobody() {
        final LogicBench bench =
                LogicBench.of(PAIR + """
                [permissive.air]
                outputs = ["lid"]
                needs = ["air-ok"]
                begun = "finish"
                """).inactive("air-ok").wish("lid", "jet").step();

        assertThat(bench.on()).containsExactly("jet");
    }

    @Test
    void aMemberThatRestsInThisScanStillCounts() {
        final LogicBench bench =
                LogicBench.of(PAIR.replace("0.5 s", "0 s")).wish("jet").until(90);
        bench.unwish("jet").wish("lid").step();

        assertThat(bench.on())
                .as("the jet rests in this scan, the lid's demand is used up")
                .isEmpty();
        assertThat(bench.wish("lid").step().on()).containsExactly("lid");
    }

    private static LogicBench crab() {
        return LogicBench.of("""
                [output.crab]
                kind = "contact"
                on-power-loss = "stays"
                longest-on = "0.5 s"
                run-time = "6 s"
                [output.jet]
                kind = "valve"
                on-power-loss = "spring-returns"
                longest-on = "2 s"
                [exclusion.one-thing]
                outputs = ["crab", "jet"]
                clear-after = "1 s"
                """).wish("crab").until(290).unwish("crab").step();
    }

    @Test
    void aBoughtPropCountsWhileItRunsOn() {
        final LogicBench bench = crab().until(7_280).wish("jet").step();

        assertThat(bench.lastMs()).isEqualTo(7_290);
        assertThat(bench.isOn("jet")).isFalse();
        assertThat(bench.whyNot("jet"))
                .containsExactly("jet may not: \"one-thing\" refuses because crab has not been clear long enough,"
                        + " begun for 7.2 s; clears when crab has been at rest for 7 s");
    }

    @Test
    void aBoughtPropIsClearAfterItsRunTimeAndItsClearTime() {
        assertThat(crab().until(7_290).wish("jet").step().edges()).endsWith("7300 +jet");
    }
}
