package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.Weather;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.visitor.Crowd;

/** The block of handbook 2.3: 600 J/K of aluminium, 1.2 K/W, 700 W, in air of 20 degC. Output 0 is the heater, 1 the pump. */
final class YardHeatTest {
    private static final long S = RigWords.S;
    private static final long MS = RigWords.MS;
    private static final double GRID_S = 0.0101;
    private static final int HEATER = 0;
    private static final int PUMP = 1;
    private static final int READY = 0;
    private static final double BLOCK_KG = 600.0 / 897;

    @Test
    void aHeaterIsReadyAfterItsStatedTimeWhateverItsBlockWeighs() {
        for (final double massKg : List.of(0.3, 0.5, BLOCK_KG)) {
            final Yard yard = fogMaker(massKg, 230.36, 0);
            yard.setOutputHigh(HEATER, true);
            assertThat(firstS(yard, () -> yard.isActive(READY), 300)).isCloseTo(230.36, within(2 * GRID_S));
            assertThat(yard.blockC(HEATER)).isCloseTo(250, within(0.02));
        }
    }

    @Test
    void aHeaterWithoutAMassIsReadyAfterItsStatedTime() {
        final Yard yard = yardOf(words().output(Family.HEATER, "heater", Fact.WARMS_IN, Duration.ofMinutes(5)));
        yard.setOutputHigh(HEATER, true);
        assertThat(firstS(yard, () -> yard.isActive(READY), 600)).isCloseTo(300, within(2 * GRID_S));
    }

    @Test
    void aTimeThatIsTooShortForTheBlockIsLeftAside() {
        // Handbook 2.3 case 4: without any loss 197.14 s; case 3 with the usual loss 230.36 s.
        for (final double toldS : List.of(60.0, 197.14, 197.3)) {
            final Yard yard = fogMaker(BLOCK_KG, toldS, 0);
            yard.setOutputHigh(HEATER, true);
            assertThat(firstS(yard, () -> yard.isActive(READY), 300)).isCloseTo(230.36, within(0.03));
        }
        final Yard possible = fogMaker(BLOCK_KG, 197.4, 0);
        possible.setOutputHigh(HEATER, true);
        assertThat(firstS(possible, () -> possible.isActive(READY), 300)).isCloseTo(197.4, within(2 * GRID_S));
    }

    @Test
    void after100SecondsTheBlockIsAtTheHandbooksTemperature() {
        // Handbook 2.3 case 5: 128.93 degC within 0.1 K.
        final Yard yard = fogMaker(BLOCK_KG, 230.36, 0);
        yard.setOutputHigh(HEATER, true);
        yard.step(10 * MS);
        yard.step(100 * S + 10 * MS);
        assertThat(yard.blockC(HEATER)).isCloseTo(128.93, within(0.1));
    }

    @Test
    void itsThermostatKeepsItOffAndOnForTheHandbooksTimesAndItsCurrentFollows() {
        // Handbook 2.3 cases 6 and 7: off 32.005 s, on 11.708 s, both within 0.2 %.
        final Yard yard = fogMaker(BLOCK_KG, 230.36, 0);
        yard.setOutputHigh(HEATER, true);
        final List<Double> edgesS = new ArrayList<>();
        boolean was = false;
        for (long atNs = 0; atNs < 400 * S; atNs += 10 * MS) {
            yard.step(atNs);
            final boolean isDrawing = yard.currentA("shed") > 0;
            if (isDrawing != was) {
                was = isDrawing;
                edgesS.add(atNs / 1e9);
            }
        }
        assertThat(edgesS.get(2) - edgesS.get(1)).isCloseTo(32.005, within(32.005 * 0.002 + GRID_S));
        assertThat(edgesS.get(3) - edgesS.get(2)).isCloseTo(11.708, within(11.708 * 0.002 + GRID_S));
        yard.setOutputHigh(HEATER, false);
        yard.step(500 * S);
        assertThat(yard.currentA("shed")).isZero();
    }

    @Test
    void aHeaterOfWhichOnlyThePowerIsToldDrawsWhatThatPowerTakes() {
        final Yard yard = fogMaker(BLOCK_KG, 230.36, 0);
        yard.setOutputHigh(HEATER, true);
        yard.step(S);
        assertThat(yard.currentA("shed")).isCloseTo(700.0 / 230, within(1e-9));
    }

    @Test
    void aLongBurstCoolsTheBlockUntilItIsNoLongerReadyWithin20To60SecondsAndItRecoversWithin30To120() {
        // Handbook 2.4 cases 5 and 6 (common practice): 20..60 s before the thermostat locks out, 30..120 s to recover.
        final Yard yard = hot(40e-3 / 60);
        yard.setOutputHigh(PUMP, true);
        final double fromS = yard.nowNs() / 1e9;
        assertThat(firstS(yard, () -> !yard.isActive(READY), 600) - fromS).isBetween(20.0, 60.0);
        assertThat(yard.isHotEnough(PUMP)).isTrue();
        assertThat(yard.blockC(HEATER)).isCloseTo(210, within(0.05));
        yard.setOutputHigh(PUMP, false);
        final double againS = yard.nowNs() / 1e9;
        assertThat(firstS(yard, () -> yard.isActive(READY), 600) - againS).isBetween(30.0, 120.0);
    }

    @Test
    void aBlockBelow200DegreesIsNotHotEnoughAndWhatItSpitsTakesNoHeat() {
        final Yard yard = hot(60e-3 / 60);
        yard.setOutputHigh(PUMP, true);
        firstS(yard, () -> !yard.isHotEnough(PUMP), 600);
        assertThat(yard.blockC(HEATER)).isBetween(199.9, 200.0);
        final double intoFluidJ = yard.heat(HEATER).intoFluidJ();
        yard.step(yard.nowNs() + 5 * S);
        assertThat(yard.heat(HEATER).intoFluidJ()).isCloseTo(intoFluidJ, within(50.0));
        firstS(yard, () -> yard.isHotEnough(PUMP), 60);
        assertThat(yard.blockC(HEATER)).isBetween(205.0, 205.1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatCameInIsStoredLostOrInTheFluid(final long seed) {
        final Yard yard = fogMaker(0.5, 230, 30e-3 / 60);
        final SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2_000; i++) {
            yard.setOutputHigh(random.nextInt(2), random.nextInt(3) != 0);
            yard.step(yard.nowNs() + random.nextLong(12 * S));
        }
        final HeatBalance balance = yard.heat(HEATER);
        final double sumJ = balance.storedJ() + balance.lostJ() + balance.intoFluidJ();
        assertThat(balance.inJ()).isGreaterThan(1e6);
        assertThat(balance.intoFluidJ()).isGreaterThan(1e5);
        assertThat(sumJ / balance.inJ()).isCloseTo(1, within(1e-9));
    }

    @Test
    void manyShortBurstsLeaveTheBlockNoColderThanTheMeanOfTheirHeatDoes() {
        // Common practice says that short bursts keep a fogger warm longer; it is put in nowhere.
        final Yard lumped = hot(30e-3 / 60);
        final Yard spread = lumped.copy();
        lumped.setOutputHigh(PUMP, true);
        lumped.step(lumped.nowNs() + 20 * S);
        lumped.setOutputHigh(PUMP, false);
        final double coldestC = lumped.blockC(HEATER);
        double spreadC = 250;
        for (int i = 0; i < 10; i++) {
            spread.setOutputHigh(PUMP, true);
            spread.step(spread.nowNs() + 2 * S);
            spread.setOutputHigh(PUMP, false);
            spreadC = Math.min(spreadC, spread.blockC(HEATER));
            spread.step(spread.nowNs() + 10 * S);
        }
        assertThat(spreadC).isGreaterThan(coldestC);
    }

    @Test
    void aBottleIsEmptyAtTheComputedSecondAndThenThePumpRunsDryUntilItIsFilled() {
        // 50 ml of 1.03 kg/l at 12 g/min last 257.5 s.
        final Yard yard = yardOf(words().output(Family.HEATER, "heater")
                .output(Family.PUMP, "pump", Fact.FLOW, 12e-3 / 60, Fact.HOLDS, 50e-6));
        yard.setOutputHigh(PUMP, true);
        assertThat(firstS(yard, () -> !yard.hasFluid(PUMP), 300)).isCloseTo(257.5, within(2 * GRID_S));
        assertThat(yard.fluidKg(PUMP)).isZero();
        yard.step(yard.nowNs() + 7 * S);
        assertThat(yard.dryS(PUMP)).isCloseTo(7, within(1e-9));

        yard.refill(PUMP);
        yard.step(yard.nowNs() + S);
        assertThat(yard.hasFluid(PUMP)).isTrue();
        assertThat(yard.fluidKg(PUMP)).isCloseTo(0.0515 - 0.0002, within(3e-6));
        assertThat(yard.dryS(PUMP)).isCloseTo(7, within(GRID_S));
    }

    @Test
    void aPumpOnAnEmptyBottleTakesNoHeat() {
        final Yard yard = yardOf(words().output(Family.HEATER, "heater")
                .output(Family.PUMP, "pump", Fact.HEATED_BY, "heater", Fact.HOLDS, 1e-6));
        yard.setOutputHigh(HEATER, true);
        yard.step(600 * S);
        yard.setOutputHigh(PUMP, true);
        yard.step(700 * S);
        // 1.03 g of 20 % glycol from 20 degC: 2.3333 MJ/kg (handbook 2.2 case 4).
        assertThat(yard.heat(HEATER).intoFluidJ()).isCloseTo(1.03e-3 * 2_333_300, within(10.0));
    }

    /** The first moment within so many seconds from now at which it holds, looked at on every grid point. */
    static double firstS(final Yard yard, final BooleanSupplier holds, final int withinS) {
        final long fromNs = yard.nowNs();
        for (long atNs = fromNs; atNs <= fromNs + withinS * S; atNs += 10 * MS) {
            yard.step(atNs);
            if (holds.getAsBoolean()) {
                return atNs / 1e9;
            }
        }
        throw new AssertionError("not within " + withinS + " s");
    }

    /** Just switched off by its thermostat. */
    static Yard hot(final double flowKgPerS) {
        final Yard yard = fogMaker(BLOCK_KG, 230.36, flowKgPerS);
        yard.setOutputHigh(HEATER, true);
        firstS(yard, () -> yard.isActive(READY), 300);
        return yard;
    }

    static Yard fogMaker(final double blockKg, final double warmsInS, final double flowKgPerS) {
        final Duration warmsIn = Duration.ofNanos(Fact.nanos(warmsInS));
        return yardOf(words().drawing(MainsWords.fedBy("shed", 0))
                .output(Family.HEATER, "heater", Fact.BLOCK, blockKg, Fact.WARMS_IN, warmsIn, Fact.POWER, 700.0)
                .drawing(slackwater.model.Load.NONE)
                .output(Family.PUMP, "pump", Fact.HEATED_BY, "heater", Fact.FLOW, flowKgPerS));
    }

    private static RigWords words() {
        return new RigWords()
                .controller("porch", false)
                .weather(new Weather(20, 0.6, 0.5, 0))
                .circuit(MainsWords.circuit("shed", 16));
    }

    private static Yard yardOf(final RigWords words) {
        return new Yard(
                words.input(InputFamily.READY, "ready", Fact.OF, "heater").rig(), Crowd.NOBODY, 1);
    }
}
