package slackwater.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;
import slackwater.model.event.Event;

/**
 * What is used is counted from what the pins did; warned of ahead of empty; refused before it runs dry. A bottle of 10 ml is
 * 10.3 g at 1.03 kg/l (common practice, no source), which at 12 g/min lasts 51.5 s.
 */
class LedgerTest {
    private static final String FOG = """
            [input.refill]
            kind = "button"
            use = "refill"
            of = "fog"
            [output.fog]
            kind = "pump"
            flow = "12 g/min"
            holds = "10 ml"
            """;
    private static final String LONGEST_ON = "longest-on = \"4 s\"\n";

    private static LogicBench limited() {
        return LogicBench.of(FOG + LONGEST_ON).inactive("refill").step();
    }

    private static LogicBench unlimited() {
        return LogicBench.of(FOG).inactive("refill").step();
    }

    /** On for so long, from the next scan on, and a scan at rest after it. */
    private static LogicBench run(final LogicBench bench, final long ms) {
        return bench.wish("fog").until(bench.lastMs() + ms).unwish("fog").step().step();
    }

    private static LedgerEntry entry(final LogicBench bench, final String output) {
        return bench.plan().ledger().entries(bench.run(), bench.run().atNs()).stream()
                .filter(entry -> entry.output().equals(output))
                .findFirst()
                .orElseThrow();
    }

    private static String weigh(final LogicBench bench, final String output, final double usedKg) {
        final int at = bench.plan().places().output(output);
        return bench.plan()
                .ledger()
                .weigh(bench.run(), bench.image(), at, usedKg, "Maren")
                .orElse("");
    }

    @Test
    void aNewLedgerCountsEverythingAsFull() {
        assertThat(entry(limited(), "fog").left().orElseThrow()).isCloseTo(10.3, within(1e-9));
    }

    @Test
    void startsTimeOnAndWhatIsUsedAreCounted() {
        final LedgerEntry entry = entry(run(run(limited(), 3_000), 2_000), "fog");
        assertThat(entry.startsCount()).isEqualTo(2);
        assertThat(entry.onNs()).isEqualTo(5_000_000_000L);
        assertThat(entry.used()).isCloseTo(1.0, within(1e-9));
        assertThat(entry.left().orElseThrow()).isCloseTo(9.3, within(1e-9));
        assertThat(entry.unit()).isEqualTo("g");
        assertThat(entry.calibration()).isEqualTo(1);
    }

    @Test
    void whatStillRunsCountsUpToTheMomentAsked() {
        final LogicBench bench = unlimited().wish("fog").until(3_010);
        assertThat(entry(bench, "fog").onNs()).isEqualTo(3_000_000_000L);
        assertThat(bench.plan()
                        .ledger()
                        .entries(bench.run(), 5_010_000_000L)
                        .get(0)
                        .used())
                .isCloseTo(1.0, within(1e-9));
    }

    @Test
    void everyOutputHasItsStartsAndTimeOn() {
        final LogicBench bench = LogicBench.of("[output.glow]\nkind = \"lamp\"\n");
        final LedgerEntry entry =
                entry(bench.step().wish("glow").until(2_000).unwish("glow").step(), "glow");
        assertThat(entry.startsCount()).isOne();
        assertThat(entry.onNs()).isEqualTo(2_000_000_000L);
        assertThat(entry.unit()).isEmpty();
        assertThat(entry.left()).isEmpty();
    }

    @Test
    void aValveUsesAirByItsStrokes() {
        final LogicBench bench = LogicBench.of("""
                [output.lid]
                kind = "valve"
                on-power-loss = "spring-returns"
                longest-on = "1 s"
                air-per-stroke = "1.5 l"
                """).step();
        bench.wish("lid").until(500).unwish("lid").step().wish("lid").step();
        assertThat(entry(bench, "lid").used()).isCloseTo(3.0, within(1e-9));
        assertThat(entry(bench, "lid").unit()).isEqualTo("l");
        assertThat(entry(bench, "lid").left()).isEmpty();
    }

    @Test
    void aMisterUsesWater() {
        final LogicBench bench = LogicBench.of("""
                [output.mist]
                kind = "mister"
                uses = "360 ml/h"
                holds = "1 l"
                """).step();
        bench.wish("mist").until(20_000);
        assertThat(entry(bench, "mist").used()).isCloseTo(1.999, within(0.002));
        assertThat(entry(bench, "mist").left().orElseThrow()).isCloseTo(998, within(0.01));
        assertThat(entry(bench, "mist").unit()).isEqualTo("ml");
    }

    @Test
    void aStartIsPermittedWhileWhatIsLeftIsAtLeastOneLongestOn() {
        final LogicBench bench = limited();
        for (int times = 0; times < 11; times++) {
            run(bench, 4_000);
        }
        run(bench, 3_500);
        assertThat(bench.whyNot("fog")).isEmpty();
        assertThat(bench.wish("fog").step().isOn("fog")).isTrue();
    }

    @Test
    void aStartIsRefusedWhenOneScanLessIsLeft() {
        final LogicBench bench = limited();
        for (int times = 0; times < 11; times++) {
            run(bench, 4_000);
        }
        run(bench, 3_510);
        assertThat(bench.wish("fog").step().isOn("fog")).isFalse();
        assertThat(bench.whyNot("fog"))
                .containsExactly("fog may not: \"runs-dry\" refuses because 0.8 g of 10 g have been left, and its"
                        + " longest-on uses 0.8 g, for 20 ms; clears when you fill it up and press the refill button"
                        + " refill");
        assertThat(bench.count(Event.Refused.class)).isOne();
    }

    @Test
    void whatRunsRestsWhenTheAccountReachesNothing() {
        final LogicBench bench = unlimited().wish("fog").until(60_000);
        assertThat(bench.edges()).containsExactly("10 +fog", "51510 -fog");
        assertThat(entry(bench, "fog").left().orElseThrow()).isZero();
        assertThat(bench.wish("fog").step().isOn("fog")).isFalse();
    }

    @Test
    void theRunWakesWhenTheBottleIsLowAndWhenItIsEmpty() {
        final LogicBench bench = unlimited().wish("fog").until(1_000);
        assertThat(bench.run().wakeNs()).isEqualTo(41_210_000_000L);
        bench.until(41_220);
        assertThat(bench.run().wakeNs()).isEqualTo(51_510_000_000L);
    }

    @Test
    void itWarnsOnceAtAFifthWithHowLongTheRestLasts() {
        final LogicBench bench = unlimited().wish("fog").until(41_200);
        assertThat(bench.count(Event.RunningLow.class)).isZero();
        bench.until(51_000).unwish("fog").until(90_000);
        assertThat(bench.said(Event.RunningLow.class))
                .containsExactly(
                        "41210: fog is running low: 2.1 g of 10 g left; at the last hour's use that lasts" + " 10.3 s");
    }

    @Test
    void theRigSaysWhenToWarn() {
        final LogicBench bench = LogicBench.of("[ledger]\nwarn-at = \"50 %\"\n" + FOG)
                .inactive("refill")
                .step();
        bench.wish("fog").until(25_750);
        assertThat(bench.count(Event.RunningLow.class)).isZero();
        assertThat(bench.until(25_760).count(Event.RunningLow.class)).isOne();
    }

    @Test
    void aLongPauseMakesTheRestLastLonger() {
        final LogicBench bench = run(unlimited(), 40_000).until(200_000);
        bench.wish("fog").until(bench.lastMs() + 1_220);
        assertThat(bench.said(Event.RunningLow.class))
                .containsExactly("201210: fog is running low: 2.1 g of 10 g left; at the last hour's use that lasts"
                        + " 50.3 s");
    }

    @Test
    void aRefillMakesItFullAndTheNextFillWarnsAgain() {
        final LogicBench bench = run(unlimited(), 50_000).active("refill").step();
        assertThat(bench.said(Event.Refilled.class))
                .containsExactly("50030: fog refilled, told by refill; 10 g had been used");
        assertThat(entry(bench, "fog").left().orElseThrow()).isCloseTo(10.3, within(1e-9));
        run(bench, 45_000);
        assertThat(bench.count(Event.RunningLow.class)).isEqualTo(2);
    }

    @Test
    void aRefillWhileItRunsBeginsTheCountAnew() {
        final LogicBench bench =
                unlimited().wish("fog").until(30_000).active("refill").until(120_000);
        assertThat(bench.edges()).containsExactly("10 +fog", "81510 -fog");
        assertThat(entry(bench, "fog").onNs()).isEqualTo(81_500_000_000L);
    }

    @Test
    void aHeldButtonRefillsOnce() {
        final LogicBench bench = run(unlimited(), 10_000).active("refill").until(20_000);
        assertThat(bench.count(Event.Refilled.class)).isOne();
    }

    @Test
    void aButtonThatIsStuckSinceBootRefillsNothing() {
        final LogicBench bench = LogicBench.of(FOG).active("refill").until(1_000);
        assertThat(bench.count(Event.Refilled.class)).isZero();
        assertThat(bench.inactive("refill").step().active("refill").step().count(Event.Refilled.class))
                .isOne();
    }

    @Test
    void aButtonThatNamesNothingRefillsItsZone() {
        final LogicBench bench =
                LogicBench.of("""
                [zone.cave]
                [zone.quay]
                [input.refill]
                kind = "key"
                use = "refill"
                zone = "cave"
                """ + pump("fog", "cave") + pump("more-fog", "cave") + pump("far-fog", "quay"));
        bench.inactive("refill").step().active("refill").step();
        assertThat(bench.said(Event.Refilled.class))
                .containsExactly(
                        "10: fog refilled, told by refill; 0.0 g had been used",
                        "10: more-fog refilled, told by refill; 0.0 g had been used");
    }

    private static String pump(final String name, final String zone) {
        return "[output." + name + "]\nkind = \"pump\"\nflow = \"12 g/min\"\nholds = \"10 ml\"\nzone = \"" + zone
                + "\"\n";
    }

    @Test
    void aWeighingCorrectsWhatIsLeftAlsoForWhatWasUsedBefore() {
        final LogicBench bench = run(unlimited(), 10_000);
        assertThat(weigh(bench, "fog", 0.003)).isEmpty();
        assertThat(entry(bench, "fog").calibration()).isCloseTo(1.5, within(1e-9));
        assertThat(entry(bench, "fog").used()).isCloseTo(3, within(1e-9));
        assertThat(entry(bench, "fog").left().orElseThrow()).isCloseTo(7.3, within(1e-9));
        assertThat(bench.step().said(Event.Calibrated.class))
                .containsExactly("10020: fog calibrated by Maren: 3.0 g weighed, 2.0 g by the rig, a factor of 1.5000");
        bench.wish("fog").until(60_000);
        assertThat(bench.edges("fog")).endsWith("10040 +fog", "34380 -fog"); // 10.3 g at 0.3 g/s is 34.333 s
    }

    @Test
    void aWeighingWhileItRunsMovesTheMomentAtWhichItRests() {
        final LogicBench bench = unlimited().wish("fog").until(10_010);
        assertThat(weigh(bench, "fog", 0.004)).isEmpty();
        assertThat(bench.until(60_000).edges()).containsExactly("10 +fog", "25760 -fog");
    }

    @Test
    void aWeighingIsBelievedFromAQuarterToFourTimes() {
        assertThat(weigh(run(unlimited(), 10_000), "fog", 0.000_5)).isEmpty();
        assertThat(weigh(run(unlimited(), 10_000), "fog", 0.008)).isEmpty();
        assertThat(weigh(run(unlimited(), 10_000), "fog", 0.000_499))
                .isEqualTo(
                        "0.5 g weighed, 2.0 g by the rig, a factor of 0.2495; only 0.25 to 4 is believed: weigh again,"
                                + " or correct the rig");
        assertThat(weigh(run(unlimited(), 10_000), "fog", 0.008_01)).contains("a factor of 4.0050; only 0.25 to 4");
        assertThat(weigh(run(unlimited(), 10_000), "fog", Double.NaN)).contains("only 0.25 to 4");
        assertThat(weigh(run(unlimited(), 10_000), "fog", -0.002)).contains("only 0.25 to 4");
    }

    @Test
    void aWeighingOfNothingIsRefused() {
        assertThat(weigh(unlimited(), "fog", 0.003)).isEqualTo("fog has used nothing since it was last filled");
        final LogicBench refilled = run(unlimited(), 10_000).active("refill").step();
        assertThat(weigh(refilled, "fog", 0.003)).isEqualTo("fog has used nothing since it was last filled");
        final LogicBench lamp =
                LogicBench.of("[output.glow]\nkind = \"lamp\"\n").step();
        assertThat(weigh(lamp, "glow", 0.003))
                .isEqualTo("glow says neither flow nor uses in the rig, so there is nothing to compare");
    }

    @Test
    void aPumpWithoutABottleIsCountedAndWeighedButNeverRefused() {
        final LogicBench bench = LogicBench.of("[output.fog]\nkind = \"pump\"\nflow = \"12 g/min\"\n")
                .step();
        run(bench, 300_000);
        assertThat(entry(bench, "fog").used()).isCloseTo(60, within(1e-9));
        assertThat(entry(bench, "fog").left()).isEmpty();
        assertThat(weigh(bench, "fog", 0.066)).isEmpty();
        assertThat(entry(bench, "fog").used()).isCloseTo(66, within(1e-9));
        assertThat(bench.whyNot("fog")).isEmpty();
    }

    /** Tallies decide nothing; time left does. */
    @Test
    void runsThatDifferOnlyInTheirTalliesHaveOneFingerprintAndThoseWithLessLeftDoNot() {
        final String lamp = "[output.glow]\nkind = \"lamp\"\n";
        final LogicBench used = LogicBench.of(lamp).step();
        used.wish("glow").until(500).unwish("glow").until(1_000);
        final LogicBench more = LogicBench.of(lamp).step();
        more.wish("glow")
                .until(100)
                .unwish("glow")
                .until(300)
                .wish("glow")
                .until(600)
                .unwish("glow")
                .until(1_000);
        assertThat(used.run().fingerprint()).isEqualTo(more.run().fingerprint());
        assertThat(entry(used, "glow")).isNotEqualTo(entry(more, "glow"));
        assertThat(run(unlimited(), 100).until(1_000).run().fingerprint())
                .isNotEqualTo(run(unlimited(), 200).until(1_000).run().fingerprint());
    }
}
