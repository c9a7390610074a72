package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.plan.RigText;
import slackwater.model.event.Event;

/** The sum of currents, inrush reserved for its time (S12), and fixed shares (S13). */
class LoadGuardTest {

    private static LogicBench lamps(final String limit) {
        return LogicBench.of("""
                [output.a]
                kind = "lamp"
                current = "1.1 A"
                [output.b]
                kind = "lamp"
                current = "2.2 A"
                [output.c]
                kind = "lamp"
                current = "0.01 A"
                [load-limit.supply]
                outputs = ["a", "b", "c"]
                limit = "%s"
                """.formatted(limit));
    }

    @Test
    void theLoadMayReachItsLimit() {
        assertThat(lamps("3.3 A").wish("a", "b").step().on())
                .as("1.1 + 2.2 is a little more than 3.3 in binary fractions")
                .containsExactly("a", "b");
    }

    @Test
    void aStartThatWouldExceedTheLimitIsRefused() {
        final LogicBench bench =
                lamps("3.3 A").wish("a", "b").until(400).wish("c").step();

        assertThat(bench.on()).containsExactly("a", "b");
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("410: c may not: \"supply\" refuses because with it the load would have been 3.31 A of"
                        + " 3.30 A for 410 ms; clears when others are at rest");
        assertThat(bench.unwish("a").step().on()).containsExactly("b", "c");
    }

    @Test
    void whatIsEnergisedIsNeverCutByTheLimit() {
        final LogicBench bench =
                lamps("1 A").pinsSay("a", true).pinsSay("b", true).wish("a", "b");

        assertThat(bench.until(100).on()).containsExactly("a", "b");
    }

    private static LogicBench inrushes() {
        return LogicBench.of("""
                [output.a]
                kind = "lamp"
                current = "1 A"
                inrush = "3 A for 100 ms"
                [output.b]
                kind = "lamp"
                current = "1 A"
                inrush = "3 A for 100 ms"
                [load-limit.supply]
                outputs = ["a", "b"]
                limit = "4 A"
                """);
    }

    @Test
    void twoInrushesInOneScanAreOneTooMany() {
        assertThat(inrushes().wish("a", "b").step().on()).containsExactly("a");
    }

    @Test
    void anInrushOneScanLaterWaitsUntilTheFirstIsOver() {
        final LogicBench bench = inrushes().wish("a").step().wish("b").until(300);

        assertThat(bench.edges()).containsExactly("0 +a", "100 +b");
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("10: b may not: \"supply\" refuses because with it the load would have been 6.00 A of"
                        + " 4.00 A for 10 ms; clears when others are at rest");
    }

    @Test
    void anInrushEndsWithItsOutput() {
        final LogicBench bench =
                inrushes().wish("a").step().unwish("a").step().wish("b").step();

        assertThat(bench.edges()).containsExactly("0 +a", "10 -a", "20 +b");
    }

    @Test
    void sinceIsTheLastChangeOfAMember() {
        final LogicBench bench = inrushes().until(500).wish("a").until(550);

        assertThat(bench.whyNot("b").get(0)).contains("6.00 A of 4.00 A for 40 ms");
    }

    @Test
    void eachControllerKeepsToItsShare() {
        final String rig = """
                [controller.north]
                board = "pi-4"
                [controller.south]
                board = "pi-4"
                [output.north-lamp]
                kind = "lamp"
                controller = "north"
                current = "2 A"
                [output.south-lamp]
                kind = "lamp"
                controller = "south"
                current = "2 A"
                [load-limit.supply]
                outputs = ["north-lamp", "south-lamp"]
                limit = "3.5 A"
                shares = { north = "2 A", south = "1.5 A" }
                """;

        final RigText text = RigText.of(rig, "");
        final LogicBench north = LogicBench.of(Plan.compile(text.rig(), text.show(), "north", Options.plain(1)));
        final LogicBench south = LogicBench.of(Plan.compile(text.rig(), text.show(), "south", Options.plain(1)));
        assertThat(north.wish("north-lamp").step().on()).containsExactly("north-lamp");
        assertThat(south.wish("south-lamp").step().on()).isEmpty();
        assertThat(south.whyNot("south-lamp").get(0)).contains("2.00 A of 1.50 A");
    }
}
