package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.model.Air;
import slackwater.model.Return;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.yard.RigWords.Part;

final class YardAirTest {
    private static final long S = RigWords.S;
    private static final long MS = RigWords.MS;
    private static final double BAR = 100_000;
    private static final double WORKING_PA = 2.5 * BAR;
    private static final Air AIR = new Air(0.05, 6 * BAR, 8 * BAR, 0.09 / 60, WORKING_PA);
    private static final int SUPPLY = 0;
    private static final int LID = 1;
    private static final int JET = 2;

    @ParameterizedTest(name = "{0} bar to 8 bar in a tank of {1} m3")
    @CsvSource({"6, 0.024, 100, 28.423", "0, 0.050, 120, 197.38"})
    void theCompressorFillsTheTankInTheTimeOfHandbookCases1Point6Point12And13(
            final double fromBar, final double tankM3, final double litresPerMin, final double seconds) {
        final Air air = new Air(tankM3, 7.9 * BAR, 8 * BAR, litresPerMin / 1000 / 60, WORKING_PA);
        final RigWords words = new RigWords().controller("porch", false);
        final Slots slots = new Slots(words.rig());
        final Tank tank = new Tank(air, state -> true, slots);
        final State state = slots.newState();
        tank.fill(state, fromBar * BAR);

        while (tank.pressurePa(state) < 8 * BAR) {
            state.setNowNs(state.nowNs() + State.GRID_NS);
            tank.step(state);
        }

        assertThat(state.nowNs() / 1e9).isCloseTo(seconds, within(0.02 + 0.003 * seconds));
        assertThat(tank.isFilling(state)).isFalse();
    }

    /** A soft start: a tenth of the flow up to half the pressure, then all of it. */
    @Test
    void aLineFillsSoftlyAndIsEmptyHalfASecondAfterItsSupplyCloses() {
        final Yard yard = yard(AIR);

        yard.setOutputHigh(SUPPLY, true);
        // 0.1 x 600 l/min nominal is 0.236 l/(s bar): choked below 1.05 bar abs, then slower; 0.375 l for half the
        // pressure
        yard.step(2 * S / 5);
        assertThat(yard.pressurePa()).isBetween(0.4 * WORKING_PA, 0.5 * WORKING_PA);
        yard.step(S);
        assertThat(yard.pressurePa()).isEqualTo(WORKING_PA);
        yard.step(10 * S);
        assertThat(yard.pressurePa()).isEqualTo(WORKING_PA);

        yard.setOutputHigh(SUPPLY, false);
        yard.step(10 * S + S / 2);
        assertThat(yard.pressurePa()).isLessThan(0.06 * WORKING_PA);
        yard.step(13 * S);
        assertThat(yard.pressurePa()).isZero();
        assertThat(yard.wakeNs()).isEqualTo(Plant.ASLEEP);
    }

    @Test
    void thePressureSwitchComesAtItsSetPointAndGoesATenthBelowIt() {
        final double setPointPa = 1.8 * BAR;

        assertThat(PressureSwitch.isActive(false, setPointPa - 1, setPointPa)).isFalse();
        assertThat(PressureSwitch.isActive(false, setPointPa, setPointPa)).isTrue();
        assertThat(PressureSwitch.isActive(true, setPointPa * 0.9, setPointPa)).isTrue();
        assertThat(PressureSwitch.isActive(true, setPointPa * 0.9 - 1, setPointPa))
                .isFalse();
    }

    @Test
    void thePressureSwitchFollowsTheHosesAndItsLineIsLowWhileItIsActive() {
        final Yard yard = yard(AIR);
        assertThat(yard.isInputHigh(0, 0)).isTrue();

        yard.setOutputHigh(SUPPLY, true);
        yard.step(3 * S);
        assertThat(yard.isInputHigh(0, 0)).isFalse();

        yard.setOutputHigh(SUPPLY, false);
        yard.step(4 * S);
        assertThat(yard.isInputHigh(0, 0)).isTrue();
    }

    @Test
    void aPressureSwitchThatNamesItsAirSupplyFollowsThatOne() {
        final Yard yard = new Yard(
                new RigWords()
                        .controller("porch", false)
                        .output(Family.AIR_SUPPLY, "near")
                        .output(Family.AIR_SUPPLY, "far")
                        .input(InputFamily.PRESSURE, "far-ok", Fact.OF, "far")
                        .rig(),
                Crowd.NOBODY,
                1);

        yard.setOutputHigh(0, true);
        yard.step(3 * S);
        assertThat(yard.isActive(0)).isFalse();
        yard.setOutputHigh(1, true);
        yard.step(6 * S);
        assertThat(yard.isActive(0)).isTrue();
    }

    @Test
    void everyStrokeTakesItsFreeAirFromTheTankOnce() {
        final Yard yard = yardWithAir(AIR);

        yard.setOutputHigh(LID, true);
        yard.setOutputHigh(JET, true);
        yard.step(8 * S);

        // Boyle: 0.45 and 1.5 litres at 1.01325 bar out of 50 litres, and 2.5 bar into a line of 0.3 litres.
        assertThat(yard.tankPa()).isCloseTo(8 * BAR - 101_325 * 1.95 / 50 - 2.5 * BAR * 0.3 / 50, within(1.0));
    }

    @Test
    void aLidRisesInItsTimeAndComesBackInItsTimeWithTheEnergyOfItsSpeed() {
        final Yard yard = yardWithAir(AIR);

        yard.setOutputHigh(LID, true);
        yard.step(5 * S + 10 * MS);
        assertThat(yard.isMoving(LID)).isTrue();
        // 2.5 kg at 0.25 m / 0.5 s.
        assertThat(yard.energyJ(LID)).isCloseTo(0.3125, within(1e-9));
        yard.step(5 * S + 500 * MS);
        assertThat(yard.isMoving(LID)).isTrue();
        yard.step(5 * S + 510 * MS);
        assertThat(yard.isMoving(LID)).isFalse();
        assertThat(yard.energyJ(LID)).isZero();

        yard.setOutputHigh(LID, false);
        yard.step(6 * S + 400 * MS);
        assertThat(yard.isMoving(LID)).isTrue();
        assertThat(yard.energyJ(LID)).isCloseTo(2.5 * StrictMath.pow(0.25 / 0.9, 2) / 2, within(1e-9));
        yard.step(6 * S + 420 * MS);
        assertThat(yard.isMoving(LID)).isFalse();
    }

    @Test
    void aLidThatFallsWithoutAirComesDownWhileItsValveIsStillEnergised() {
        final Yard yard = yardWithAir(AIR);
        yard.setOutputHigh(LID, true);
        yard.step(8 * S);
        assertThat(yard.isMoving(LID)).isFalse();

        yard.setOutputHigh(SUPPLY, false);
        yard.step(8 * S + 300 * MS);

        assertThat(yard.isPowered(LID)).isTrue();
        assertThat(yard.isMoving(LID)).isTrue();
        yard.step(8 * S + 1200 * MS);
        assertThat(yard.isMoving(LID)).isFalse();
    }

    @Test
    void aPropIsNotLiftedWithoutAir() {
        final Yard yard = yard(AIR);

        yard.setOutputHigh(LID, true);
        yard.step(S);

        assertThat(yard.isMoving(LID)).isFalse();
        assertThat(yard.tankPa()).isEqualTo(8 * BAR);
    }

    @Test
    void anUnthrottledLidOf3KilogramsLandsWith8Point8JoulesAsRuleS1Says() {
        final Yard yard = new Yard(
                new RigWords()
                        .controller("porch", false)
                        .output(
                                Part.of(Family.VALVE, "lid").returns(Return.FALLS, Return.FALLS),
                                Fact.MOVING_MASS,
                                3.0,
                                Fact.TRAVEL,
                                0.30)
                        .rig(),
                Crowd.NOBODY,
                1);
        yard.setOutputHigh(0, true);
        yard.step(2 * S);
        yard.setOutputHigh(0, false);

        double mostJ = 0;
        long lastMovingNs = 0;
        for (long atNs = 2 * S; atNs < 3 * S; atNs += 10 * MS) {
            yard.step(atNs);
            mostJ = Math.max(mostJ, yard.energyJ(0));
            lastMovingNs = yard.isMoving(0) ? atNs : lastMovingNs;
        }

        assertThat(mostJ).isBetween(8.1, 8.83);
        // Free fall: sqrt(2 * 0.30 m / 9.81 m/s2) = 0.247 s.
        assertThat(lastMovingNs / 1e9).isCloseTo(2.247, within(0.02));
    }

    @Test
    void aPartThatStaysIsWhereItWasWithoutPower() {
        final Yard yard = new Yard(
                new RigWords()
                        .controller("porch", false)
                        .output(Part.of(Family.VALVE, "arm").returns(Return.STAYS, Return.STAYS), Fact.TRAVEL, 0.30)
                        .rig(),
                Crowd.NOBODY,
                1);
        yard.setOutputHigh(0, true);
        yard.step(200 * MS);
        assertThat(yard.isMoving(0)).isTrue();

        yard.setOutputHigh(0, false);
        yard.step(S);

        assertThat(yard.isMoving(0)).isFalse();
        yard.setOutputHigh(0, true);
        yard.step(S + 280 * MS);
        assertThat(yard.isMoving(0)).isTrue();
        yard.step(S + 330 * MS);
        assertThat(yard.isMoving(0)).isFalse();
    }

    @Test
    void theCompressorStartsBelowItsCutInAndNotAtIt() {
        final Air air = new Air(0.05, 6 * BAR, 8 * BAR, 0.09 / 60, WORKING_PA);
        final Slots slots = new Slots(new RigWords().controller("porch", false).rig());
        final Tank tank = new Tank(air, state -> true, slots);
        final State state = slots.newState();

        tank.fill(state, 6 * BAR);
        tank.step(state);
        assertThat(tank.isFilling(state)).isFalse();
        tank.fill(state, 6 * BAR - 1);
        tank.step(state);
        assertThat(tank.isFilling(state)).isTrue();
    }

    private static Yard yardWithAir(final Air air) {
        final Yard yard = yard(air);
        yard.setOutputHigh(SUPPLY, true);
        yard.step(5 * S);
        return yard;
    }

    private static Yard yard(final Air air) {
        return new Yard(
                new RigWords()
                        .controller("porch", false)
                        .air(air)
                        .output(Family.AIR_SUPPLY, "air")
                        .output(
                                Part.of(Family.VALVE, "lid").returns(Return.SPRING_RETURNS, Return.FALLS),
                                Fact.TRAVEL,
                                0.25,
                                Fact.MOVING_MASS,
                                2.5,
                                Fact.STROKES_IN,
                                Duration.ofMillis(500),
                                Fact.RETURNS_IN,
                                Duration.ofMillis(900),
                                Fact.AIR_PER_STROKE,
                                0.45e-3)
                        .output(Family.VALVE, "jet", Fact.AIR_PER_STROKE, 1.5e-3)
                        .input(InputFamily.PRESSURE, "air-ok", Fact.SET_POINT, 1.8 * BAR)
                        .rig(),
                Crowd.NOBODY,
                1);
    }
}
