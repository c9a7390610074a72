package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.plan.RigText;
import slackwater.model.event.Event;

/** When air falls, the least important outputs go without first; new starts only, and only on proven views (S7). */
class ShedGuardTest {
    private static final String TABLES = """
            [input.air-plenty]
            kind = "pressure"
            [output.tide-jet]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "1 s"
            [output.bell]
            kind = "sounder"
            longest-on = "1 s"
            [output.clam-lid]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "5 s"
            [shed.thin-air]
            needs = ["air-plenty"]
            outputs = ["tide-jet", "bell", "clam-lid"]
            next-after = "30 s"
            """;
    private static final String[] ALL = {"tide-jet", "bell", "clam-lid"};

    private static LogicBench plenty() {
        return LogicBench.of(TABLES).active("air-plenty").step();
    }

    /** Which of all would start if all were asked for at a moment, the pressure being gone since 10 ms. */
    private static List<String> startedAt(final long ms) {
        final LogicBench bench = plenty().inactive("air-plenty").until(ms - LogicBench.SCAN_MS);
        return bench.wish(ALL).step().on();
    }

    @Test
    void whileEveryNeedIsProvenAllMayStart() {
        assertThat(plenty().wish(ALL).step().on()).containsExactly(ALL);
    }

    @Test
    void theLeastImportantIsRefusedFromTheMomentAtWhichTheNeedIsNotProven() {
        assertThat(startedAt(10)).containsExactly("bell", "clam-lid");
    }

    @Test
    void theNextFollowsAfterItsTimeAndNotAScanBefore() {
        assertThat(startedAt(30_000)).containsExactly("bell", "clam-lid");
        assertThat(startedAt(30_010)).containsExactly("clam-lid");
        assertThat(startedAt(60_000)).containsExactly("clam-lid");
        assertThat(startedAt(60_010)).isEmpty();
    }

    @Test
    void anUnknownInputIsNoPlenty() {
        assertThat(plenty().unknown("air-plenty").wish(ALL).step().on()).containsExactly("bell", "clam-lid");
    }

    @Test
    void allMayStartAgainAsSoonAsTheNeedIsProvenAndTheTimesBeginAnew() {
        final LogicBench bench = plenty().inactive("air-plenty").until(70_000).active("air-plenty");
        assertThat(bench.wish(ALL).step().on()).containsExactly(ALL);

        bench.unwish(ALL).until(72_000).inactive("air-plenty").until(100_000);
        assertThat(bench.wish(ALL).step().on()).containsExactly("bell", "clam-lid");
    }

    @Test
    void aStrokeBegunIsFinished() {
        final LogicBench bench =
                plenty().wish("tide-jet").until(300).inactive("air-plenty").until(2_000);
        assertThat(bench.edges()).containsExactly("10 +tide-jet", "1010 -tide-jet");
    }

    @Test
    void theRefusalSaysWhatItSawSinceWhenAndWhatClearsIt() {
        final LogicBench bench = plenty().inactive("air-plenty").until(35_000);
        assertThat(bench.wish("bell").step().said(Event.Refused.class))
                .containsExactly("35010: bell may not: \"shed\" refuses because air-plenty is warming up for 35 s;"
                        + " clears when the pressure has come back: air-plenty is proven active");
        assertThat(bench.whyNot("clam-lid")).isEmpty();
    }

    @Test
    void theRunWakesForEveryOutputThatIsShedNext() {
        final LogicBench bench = plenty().inactive("air-plenty").step().step();
        assertThat(bench.run().wakeNs()).isEqualTo(30_010_000_000L);
        bench.until(30_020);
        assertThat(bench.run().wakeNs()).isEqualTo(60_010_000_000L);
    }

    /** The place counts in the whole list: the second controller's output waits for the first one's. */
    @Test
    void anOutputKeepsItsPlaceAlsoWhenThoseBeforeItAreOnAnotherController() {
        final RigText text = RigText.of("""
                [controller.north]
                board = "pi-4"
                [controller.south]
                board = "pi-4"
                [zone.yard]
                [input.north-air]
                kind = "pressure"
                controller = "north"
                [output.jet]
                kind = "sounder"
                controller = "north"
                longest-on = "1 s"
                [output.lid]
                kind = "sounder"
                controller = "north"
                longest-on = "1 s"
                [output.elsewhere]
                kind = "sounder"
                controller = "south"
                longest-on = "1 s"
                [shed.air]
                needs = ["north-air"]
                outputs = ["elsewhere", "jet", "lid"]
                next-after = "1 s"
                """, "");
        final Plan plan = Plan.compile(text.rig(), text.show(), "north", Options.plain(1));
        final LogicBench bench = LogicBench.of(plan);
        bench.active("north-air").step().inactive("north-air").step();
        assertThat(bench.whyNot("jet")).isEmpty();
        assertThat(bench.until(1_000).whyNot("jet")).isEmpty();
        assertThat(bench.until(1_010).whyNot("jet")).hasSize(1);
        assertThat(bench.until(2_000).whyNot("lid")).isEmpty();
        assertThat(bench.until(2_010).whyNot("lid")).hasSize(1);
    }
}
