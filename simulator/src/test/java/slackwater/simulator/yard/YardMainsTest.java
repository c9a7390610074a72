package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slackwater.model.Air;
import slackwater.model.Circuit;
import slackwater.model.Contact;
import slackwater.model.Feed;
import slackwater.model.Load;
import slackwater.model.kind.Family;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.yard.RigWords.Part;

/** Circuits, breakers, power supplies and relays. */
final class YardMainsTest {
    private static final long S = RigWords.S;
    private static final long MS = RigWords.MS;

    @Test
    void aSupplyGivesAllThatItGivesAndFoldsForASecondAtAnyMore() {
        final Yard at = yard(words().drawing(MainsWords.fedBy("twelve", 2.5))
                .output(Family.LAMP, "a")
                .output(Family.LAMP, "b"));
        switchOn(at, 0, 1);
        at.step(10 * S);
        assertThat(at.isPowered(0)).isTrue();
        assertThat(at.currentA("twelve")).isCloseTo(5, within(1e-12));

        final Yard above = yard(words().drawing(MainsWords.fedBy("twelve", 2.501))
                .output(Family.LAMP, "a")
                .output(Family.LAMP, "b"));
        switchOn(above, 0, 1);
        assertThat(edgesMs(above, 0, 2_100)).containsExactly(10L, 1_010L, 1_020L, 2_020L, 2_030L);
    }

    @Test
    void aSupplyThatFoldedComesBackForGoodWhenTheLoadIsLess() {
        final Yard yard = yard(words().drawing(MainsWords.fedBy("twelve", 3))
                .output(Family.LAMP, "a")
                .output(Family.LAMP, "b"));
        switchOn(yard, 0, 1);
        yard.step(500 * MS);
        assertThat(yard.isPowered(0)).isFalse();
        yard.setOutputHigh(1, false);
        yard.step(10 * S);
        assertThat(yard.isPowered(0)).isTrue();
        assertThat(yard.currentA("twelve")).isEqualTo(3);
    }

    @Test
    void anInrushCountsForItsTime() {
        final Load starting = MainsWords.fedBy("twelve", 1, 5, Duration.ofMillis(40));
        final Yard yard = yard(words().drawing(starting).output(Family.LAMP, "a"));
        switchOn(yard, 0);
        yard.step(40 * MS);
        assertThat(yard.currentA("twelve")).isEqualTo(5);
        yard.step(50 * MS);
        assertThat(yard.currentA("twelve")).isEqualTo(1);

        final Yard tooMuch = yard(words().drawing(MainsWords.fedBy("twelve", 1, 5.001, Duration.ofMillis(40)))
                .output(Family.LAMP, "a"));
        switchOn(tooMuch, 0);
        tooMuch.step(40 * MS);
        assertThat(tooMuch.isPowered(0)).isFalse();
    }

    @Test
    void aSupplyDrawsItsOutputDividedByItsEfficiencyFromItsCircuit() {
        final Yard yard = yard(words().drawing(MainsWords.fedBy("twelve", 4)).output(Family.LAMP, "a"));
        switchOn(yard, 0);
        yard.step(S);
        assertThat(yard.currentA("shed")).isCloseTo(4 * 12 / 0.8 / 230, within(1e-12));
    }

    @Test
    void aBreakerHoldsBelowTheHeatOfItsTripAndTripsAboveIt() {
        // The bimetal trips at a heat of 1.13 * 1.45 (IEC 60898-1, from memory): 1.28006 rated currents for ever.
        final Yard below = heaters(16 * 1.280);
        below.step(4 * 3_600 * S);
        assertThat(below.isTripped("shed")).isFalse();
        final Yard above = heaters(16 * 1.281);
        above.step(3_600 * S);
        assertThat(above.isTripped("shed")).isTrue();
        assertThat(above.isPowered(0)).isFalse();
        assertThat(above.currentA("shed")).isZero();
    }

    @Test
    void at2Point55TimesItsRatingABreakerTripsAfterTheComputedTimeAndSoonerWhenItIsWarm() {
        // 100 s * ln(6.5025 / (6.5025 - 1.6385)) = 29.03 s, within 1 s to 60 s (IEC 60898-1, from memory).
        final Yard cold = heaters(16 * 2.55);
        final double coldS = YardHeatTest.firstS(cold, () -> cold.isTripped("shed"), 60);
        assertThat(coldS).isCloseTo(29.03, within(0.03));

        cold.resetBreaker("shed");
        final double againS = cold.nowNs() / 1e9;
        assertThat(YardHeatTest.firstS(cold, () -> cold.isTripped("shed"), 60) - againS)
                .isLessThan(0.1);

        cold.step(cold.nowNs() + 1_000 * S);
        cold.resetBreaker("shed");
        final double laterS = cold.nowNs() / 1e9;
        assertThat(YardHeatTest.firstS(cold, () -> cold.isTripped("shed"), 60) - laterS)
                .isCloseTo(29.03, within(0.05));
    }

    @Test
    void theMagnetTripsAtOnceFromFiveTimesAndAfterATenthOfASecondFromThree() {
        assertThat(tripsAfterMs(16 * 5.0, 30)).isEqualTo(10);
        assertThat(tripsAfterMs(16 * 4.99, 30)).isEqualTo(-1);
        assertThat(tripsAfterMs(16 * 3.0, 90)).isEqualTo(-1);
        assertThat(tripsAfterMs(16 * 3.0, 120)).isEqualTo(110);
        assertThat(tripsAfterMs(16 * 2.99, 120)).isEqualTo(-1);
    }

    @Test
    void aTripTakesEverythingBehindItAwayUntilSomebodyResetsIt() {
        final Yard yard = yard(words().drawing(MainsWords.fedBy("twelve", 1))
                .output(Family.LAMP, "lamp")
                .drawing(MainsWords.fedBy("shed", 100))
                .output(Family.SOUNDER, "short")
                .drawing(Load.NONE)
                .output(Family.LAMP, "elsewhere"));
        switchOn(yard, 0, 1, 2);
        yard.step(100 * MS);
        assertThat(yard.isTripped("shed")).isTrue();
        assertThat(List.of(yard.isPowered(0), yard.isPowered(1), yard.isPowered(2)))
                .containsExactly(false, false, true);

        yard.setOutputHigh(1, false);
        yard.step(3_600 * S);
        assertThat(yard.isPowered(0)).isFalse();
        yard.resetBreaker("shed");
        yard.step(yard.nowNs() + S);
        assertThat(yard.isPowered(0)).isTrue();
        assertThat(yard.isTripped("shed")).isFalse();
    }

    @Test
    void aCompressorWithoutPowerStopsAndGoesOnAfterwards() {
        final Load motor = MainsWords.fedBy("shed", 5);
        final Air.Plate plate = new Air.Plate(
                OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(), motor);
        final Yard yard = yard(words().air(new Air(0.05, 600_000, 800_000, 0.0015, 250_000, plate))
                .drawing(MainsWords.fedBy("shed", 100))
                .output(Family.SOUNDER, "short")
                .drawing(Load.NONE)
                .output(Family.VALVE, "jet", Fact.AIR_PER_STROKE, 0.12));
        switchOn(yard, 1);
        yard.step(10 * S);
        assertThat(yard.currentA("shed")).isEqualTo(5);

        switchOn(yard, 0);
        yard.step(11 * S);
        final double stoppedPa = yard.tankPa();
        yard.step(100 * S);
        assertThat(yard.tankPa()).isEqualTo(stoppedPa);
        yard.setOutputHigh(0, false);
        yard.resetBreaker("shed");
        yard.step(200 * S);
        assertThat(yard.tankPa()).isGreaterThan(stoppedPa);
    }

    @Test
    void whatElseHangsOnACircuitCounts() {
        final Yard yard = yard(new RigWords()
                .controller("porch", false)
                .circuit(new Circuit("shed", 230, 16, OptionalDouble.empty(), 7))
                .drawing(MainsWords.fedBy("shed", 3))
                .output(Family.LAMP, "a"));
        yard.step(S);
        assertThat(yard.currentA("shed")).isEqualTo(7);
        switchOn(yard, 0);
        yard.step(2 * S);
        assertThat(yard.currentA("shed")).isEqualTo(10);
    }

    @Test
    void aLeakToGroundTripsFromItsThresholdAfterTheTimeOfAClassAInterrupter() {
        // Handbook 3.2 case 1 (UL 943): 6 mA trip within 5.5939 s.
        final Yard yard = leaking(0.006);
        yard.leakToGround("shed", 0.00599);
        yard.step(60 * S);
        assertThat(yard.isTripped("shed")).isFalse();
        yard.leakToGround("shed", 0.006);
        assertThat(YardHeatTest.firstS(yard, () -> yard.isTripped("shed"), 10)).isCloseTo(65.594, within(0.011));
        yard.resetBreaker("shed");
        yard.step(yard.nowNs() + 10 * S);
        assertThat(yard.isTripped("shed")).isTrue();
        yard.leakToGround("shed", 0);
        yard.resetBreaker("shed");
        yard.step(yard.nowNs() + 60 * S);
        assertThat(yard.isTripped("shed")).isFalse();
    }

    @Test
    void aCircuitWithoutProtectionNeverTripsForALeakAndOneOf30MilliamperesWithin300Milliseconds() {
        final Yard unprotected = yard(words().output(Family.LAMP, "a"));
        unprotected.leakToGround("shed", 1);
        unprotected.step(60 * S);
        assertThat(unprotected.isTripped("shed")).isFalse();

        final Yard yard = leaking(0.03);
        yard.leakToGround("shed", 0.029);
        yard.step(60 * S);
        yard.leakToGround("shed", 0.03);
        yard.step(60 * S + 290 * MS);
        assertThat(yard.isTripped("shed")).isFalse();
        yard.step(60 * S + 300 * MS);
        assertThat(yard.isTripped("shed")).isTrue();
    }

    @Test
    void aRelayFollowsItsPinLaterAndBouncesOnceWhenItCloses() {
        // Operates in 8 ms and releases in 34 ms, rounded up to the grid.
        final Yard yard = relay(Contact.NORMALLY_OPEN, 8, 34, 3);
        yard.step(100 * MS);
        yard.setOutputHigh(0, true);
        yard.step(100 * MS);
        assertThat(yard.isPowered(0)).isFalse();
        final List<Long> edges = edgesMs(yard, 0, 300);
        yard.setOutputHigh(0, false);
        edges.addAll(edgesMs(yard, 0, 500));
        assertThat(edges).containsExactly(110L, 120L, 130L, 340L);
    }

    @Test
    void aPulseShorterThanTheRelayNeedsLeavesItsContactOpen() {
        final Yard yard = relay(Contact.NORMALLY_OPEN, 30, 10, 0);
        yard.setOutputHigh(0, true);
        yard.step(20 * MS);
        yard.setOutputHigh(0, false);
        assertThat(edgesMs(yard, 0, 500)).isEmpty();
        yard.setOutputHigh(0, true);
        yard.step(530 * MS);
        assertThat(yard.isPowered(0)).isTrue();
    }

    @Test
    void aStopTakesThePowerAtOnceWhateverTheRelayNeeds() {
        final Yard yard = relay(Contact.NORMALLY_OPEN, 8, 34, 0);
        yard.setOutputHigh(0, true);
        yard.step(S);
        assertThat(yard.isPowered(0)).isTrue();
        yard.pressStopLoop(true);
        assertThat(yard.isPowered(0)).isFalse();
    }

    @Test
    void aNormallyClosedContactOpensAfterTheOperateTimeAndBouncesWhenItIsReleased() {
        final Yard yard = relay(Contact.NORMALLY_CLOSED, 8, 34, 3);
        assertThat(yard.isPowered(0)).isTrue();
        yard.setOutputHigh(0, true);
        final List<Long> edges = edgesMs(yard, 0, 100);
        yard.setOutputHigh(0, false);
        edges.addAll(edgesMs(yard, 0, 300));
        assertThat(edges).containsExactly(10L, 140L, 150L, 160L);
    }

    @Test
    void nobodyAsksForACircuitThatIsNotThere() {
        final Yard yard = yard(words());
        assertThatThrownBy(() -> yard.isTripped("barn")).hasMessageContaining("circuit=barn");
        assertThatThrownBy(() -> yard.currentA("barn")).hasMessageContaining("circuit=barn");
    }

    /** When the breaker trips on an inrush, or -1 for never. */
    private static long tripsAfterMs(final double inrushA, final int lastsMs) {
        final Load load = MainsWords.fedBy("shed", 1, inrushA, Duration.ofMillis(lastsMs));
        final Yard yard = yard(words().drawing(load).output(Family.LAMP, "a"));
        yard.step(0);
        switchOn(yard, 0);
        for (long atMs = 10; atMs <= 1_000; atMs += 10) {
            yard.step(atMs * MS);
            if (yard.isTripped("shed")) {
                return atMs;
            }
        }
        return -1;
    }

    private static Yard heaters(final double amps) {
        final Yard yard = yard(words().drawing(MainsWords.fedBy("shed", amps)).output(Family.LAMP, "load"));
        switchOn(yard, 0);
        return yard;
    }

    private static Yard leaking(final double groundFaultA) {
        return yard(new RigWords()
                .controller("porch", false)
                .circuit(new Circuit("shed", 230, 16, OptionalDouble.of(groundFaultA), 0))
                .output(Family.LAMP, "a"));
    }

    private static Yard relay(final Contact contact, final int operatesMs, final int releasesMs, final int bouncesMs) {
        final Feed.SwitchedBy through = new Feed.SwitchedBy(
                Feed.Device.RELAY,
                10,
                0,
                Duration.ofMillis(operatesMs),
                Duration.ofMillis(releasesMs),
                Duration.ofMillis(bouncesMs));
        final Feed feed = new Feed(Optional.empty(), Optional.empty(), Optional.of(through), Optional.empty());
        return yard(words().drawing(new Load(1, 1, Duration.ZERO, feed))
                .output(Part.of(Family.LAMP, "a").with(contact)));
    }

    private static List<Long> edgesMs(final Yard yard, final int output, final long untilMs) {
        final List<Long> edges = new ArrayList<>();
        boolean was = yard.isPowered(output);
        for (long atNs = yard.nowNs(); atNs <= untilMs * MS; atNs += 10 * MS) {
            yard.step(atNs);
            if (yard.isPowered(output) != was) {
                was = !was;
                edges.add(atNs / MS);
            }
        }
        return edges;
    }

    private static void switchOn(final Yard yard, final int... outputs) {
        for (final int output : outputs) {
            yard.setOutputHigh(output, true);
        }
    }

    private static RigWords words() {
        return new RigWords()
                .controller("porch", false)
                .circuit(MainsWords.circuit("shed", 16))
                .supply(MainsWords.supply("twelve", 5, "shed"));
    }

    private static Yard yard(final RigWords words) {
        return new Yard(words.rig(), Crowd.NOBODY, 1);
    }
}
