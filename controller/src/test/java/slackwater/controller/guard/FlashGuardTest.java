package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.plan.RigText;
import slackwater.model.event.Event;

/**
 * Onsets in any [t, t+1 s) stay within the limit (S14; WCAG 2.x success criterion 2.3.1, handbook 4.1 case 1; counting as
 * handbook 4.3).
 */
class FlashGuardTest {
    private static final String PULSED = """
            [output.a]
            kind = "strobe"
            one-flash-per-pulse = true
            longest-on = "5 s"
            [output.b]
            kind = "strobe"
            one-flash-per-pulse = true
            longest-on = "5 s"
            """;

    private static LogicBench pulsed(final int flashes) {
        return LogicBench.of(PULSED + """
                [flash-limit.lightning]
                outputs = ["a", "b"]
                flashes = %d
                """.formatted(flashes));
    }

    /** A pulse of one scan that is asked for at each moment. */
    private static LogicBench pulse(final LogicBench bench, final String output, final long... momentsMs) {
        for (final long atMs : momentsMs) {
            bench.until(atMs - LogicBench.SCAN_MS)
                    .wish(output)
                    .step()
                    .unwish(output)
                    .step();
        }
        return bench;
    }

    private static List<Long> onsetsMs(final LogicBench bench) {
        return bench.edges().stream()
                .filter(edge -> edge.contains("+"))
                .map(edge -> Long.parseLong(edge.substring(0, edge.indexOf(' '))))
                .toList();
    }

    private static long mostInASecond(final List<Long> onsetsMs) {
        return onsetsMs.stream()
                .mapToLong(from -> onsetsMs.stream()
                        .filter(at -> at >= from && at < from + 1_000)
                        .count())
                .max()
                .orElse(0);
    }

    @Test
    void anOnsetAtNinetyNineHundredthsOfASecondIsInTheSecond() {
        final LogicBench bench = pulse(pulsed(1), "a", 100, 1_090);

        assertThat(onsetsMs(bench)).containsExactly(100L);
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("1090: a may not: \"lightning\" refuses because with it there would have been 2"
                        + " flashes in a second of at most 1 for 980 ms; clears when a second has passed since the"
                        + " first of them");
    }

    @Test
    void anOnsetAfterAWholeSecondIsInTheNext() {
        assertThat(onsetsMs(pulse(pulsed(1), "a", 100, 1_100))).containsExactly(100L, 1_100L);
    }

    @Test
    void threeFlashesInASecondAreFineAndTheFourthIsRefused() {
        final LogicBench bench = pulse(pulsed(3), "a", 100, 400, 700, 1_050);

        assertThat(onsetsMs(bench)).as("handbook 4.3 case 4").containsExactly(100L, 400L, 700L);
        assertThat(bench.said(Event.Refused.class)).singleElement().asString().contains("4 flashes in a second of");
    }

    @Test
    void aFourthFlashAfterASecondIsFine() {
        assertThat(onsetsMs(pulse(pulsed(3), "a", 100, 450, 800, 1_150)))
                .as("handbook 4.3 case 5")
                .containsExactly(100L, 450L, 800L, 1_150L);
    }

    @Test
    void twoStrobesAtTwoHertzEachAQuarterSecondApartAreCutToThreeASecond() {
        final LogicBench bench = pulsed(3);
        for (long atMs = 100; atMs < 5_000; atMs += 500) {
            pulse(bench, "a", atMs);
            pulse(bench, "b", atMs + 250);
        }

        assertThat(mostInASecond(onsetsMs(bench))).as("handbook 4.3 case 6").isEqualTo(3);
        assertThat(bench.count(Event.Refused.class)).isPositive();
    }

    @Test
    void burstsOfThreeWithAWholeSecondBetweenThemAreFine() {
        assertThat(onsetsMs(pulse(pulsed(3), "a", 100, 200, 300, 1_300, 1_400, 1_500)))
                .as("handbook 4.3 case 8")
                .hasSize(6);
        assertThat(onsetsMs(pulse(pulsed(3), "a", 100, 200, 300, 1_050, 1_150, 1_250)))
                .as("handbook 4.3 case 9")
                .containsExactly(100L, 200L, 300L, 1_150L, 1_250L);
    }

    @Test
    void twoOnsetsInOneScanCountAsTwo() {
        assertThat(pulsed(1).wish("a", "b").step().on()).containsExactly("a");
        assertThat(pulsed(2).wish("a", "b").step().on()).containsExactly("a", "b");
    }

    @Test
    void aStrobeThatIsLitAlreadyIsNeverCut() {
        final LogicBench bench = pulsed(1).wish("a").until(2_000);

        assertThat(bench.edges()).containsExactly("0 +a");
        assertThat(bench.whyNot("b")).as("a second after its onset").isEmpty();
    }

    private static LogicBench bought(final int flashes, final String rate) {
        return LogicBench.of("""
                [output.a]
                kind = "strobe"
                flash-rate = "%s"
                longest-on = "5 s"
                [output.b]
                kind = "strobe"
                one-flash-per-pulse = true
                longest-on = "5 s"
                [flash-limit.lightning]
                outputs = ["a", "b"]
                flashes = %d
                """.formatted(rate, flashes));
    }

    @Test
    void aStrobeOfEightHertzCountsEight() {
        assertThat(bought(7, "8 Hz").wish("a").step().on()).isEmpty();
        final LogicBench bench = bought(8, "8 Hz").wish("a").until(990);
        assertThat(bench.on()).containsExactly("a");
        assertThat(bench.whyNot("b").get(0)).contains("9 flashes in a second of at most 8");
        assertThat(bought(9, "8 Hz").wish("a", "b").step().on()).containsExactly("a", "b");
    }

    @Test
    void aBrokenRateCountsAsTheNextWholeOne() {
        assertThat(bought(2, "2.1 Hz").wish("a").step().on()).isEmpty();
        assertThat(bought(3, "2.1 Hz").wish("a").step().on()).containsExactly("a");
    }

    @Test
    void aStrobesOwnRateIsReservedUntilJustASecondAfterItsEnd() {
        final LogicBench bench =
                bought(3, "3 Hz").wish("a").until(490).unwish("a").step();
        assertThat(pulse(bench, "b", 1_490, 1_510).edges()).containsExactly("0 +a", "500 -a", "1510 +b", "1520 -b");
    }

    @Test
    void aStrobesOwnRateIsFreeASecondAfterItsEnd() {
        final LogicBench bench =
                bought(3, "3 Hz").wish("a").until(490).unwish("a").step();
        assertThat(pulse(bench, "b", 1_500).edges()).endsWith("1500 +b", "1510 -b");
    }

    /** Each start flashes at once, however slow the strobe's own rate is. */
    @Test
    void aBoughtStrobeStartedAgainAndAgainDoesNotFlashFasterThanTheLimit() {
        final LogicBench bench = bought(3, "1 Hz");
        for (long atMs = 100; atMs < 6_000; atMs += 100) {
            pulse(bench, "a", atMs);
        }

        assertThat(mostInASecond(onsetsMs(bench))).isEqualTo(3);
    }

    @Test
    void anotherStartOfABoughtStrobeCountsOneMoreThanItsRate() {
        final LogicBench refused = pulse(bought(3, "3 Hz"), "a", 100, 300);
        assertThat(onsetsMs(refused)).containsExactly(100L);
        assertThat(refused.said(Event.Refused.class)).singleElement().asString().contains("4 flashes in a second of");

        final LogicBench permitted = pulse(bought(4, "3 Hz"), "a", 100, 300);
        assertThat(onsetsMs(permitted)).containsExactly(100L, 300L);
        assertThat(permitted.whyNot("b").get(0)).contains("5 flashes in a second of at most 4");
    }

    @Test
    void aShareOfNoneRefusesEveryFlash() {
        final RigText text = RigText.of(BANKS.formatted(3, 0), "");
        final LogicBench south = LogicBench.of(Plan.compile(text.rig(), text.show(), "south", Options.plain(1)));

        assertThat(south.wish("south-flash").step().on()).isEmpty();
        assertThat(south.whyNot("south-flash").get(0)).contains("1 flashes in a second of at most 0");
    }

    private static final String BANKS = """
            [controller.north]
            board = "pi-4"
            [controller.south]
            board = "pi-4"
            [output.north-flash]
            kind = "strobe"
            controller = "north"
            one-flash-per-pulse = true
            longest-on = "1 s"
            [output.south-flash]
            kind = "strobe"
            controller = "south"
            one-flash-per-pulse = true
            longest-on = "1 s"
            [flash-limit.lightning]
            outputs = ["north-flash", "south-flash"]
            flashes = 3
            shares = { north = %d, south = %d }
            """;

    /** Two controllers that cannot talk, at every offset of their scans and of their flashes (S13). */
    @Test
    void sharesKeepTheWholeLimitWithoutALinkAtEveryOffset() {
        final RigText text = RigText.of(BANKS.formatted(1, 2), "");
        final Plan northPlan = Plan.compile(text.rig(), text.show(), "north", Options.plain(1));
        final Plan southPlan = Plan.compile(text.rig(), text.show(), "south", Options.plain(1));
        long most = 0;
        for (long offsetMs = 0; offsetMs < 130; offsetMs++) {
            final List<Long> onsets = new ArrayList<>(onsetsOfEagerBank(northPlan, "north-flash", 0));
            onsets.addAll(onsetsOfEagerBank(southPlan, "south-flash", offsetMs));
            final long now = mostInASecond(onsets);
            assertThat(now).as("offset %d ms", offsetMs).isLessThanOrEqualTo(3);
            most = Math.max(most, now);
        }
        assertThat(most).as("the limit is used").isEqualTo(3);
    }

    private static List<Long> onsetsOfEagerBank(final Plan plan, final String strobe, final long offsetMs) {
        final LogicBench bench = LogicBench.of(plan).offset(offsetMs);
        for (long pulse = 0; pulse < 30; pulse++) {
            bench.wish(strobe).step().unwish(strobe);
            for (int i = 0; i < 12; i++) {
                bench.step();
            }
        }
        return onsetsMs(bench);
    }
}
