package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 2.3: a lumped block of 600 J/K and 1.2 K/W, an example and no product. */
class BlockHeatTest {
    private static final double HEATER_W = 700;
    private static final double G_PER_MIN = 1e-3 / 60;
    private static final BlockHeat BLOCK = new BlockHeat(600, 1.2, 20);
    private static final Thermostat BAND = new Thermostat(240, 250);
    private static final double FLUID_J_PER_KG = FogFluid.USUAL.heatJPerKg(20);
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("2.3.1", BLOCK::timeConstantS);
        COMPUTED.put("2.3.2", () -> BLOCK.finalC(HEATER_W));
        COMPUTED.put("2.3.3", () -> BLOCK.warmUpS(20, 250, HEATER_W).orElseThrow());
        COMPUTED.put("2.3.4", () -> BLOCK.losslessWarmUpS(20, 250, HEATER_W));
        COMPUTED.put("2.3.5", () -> BLOCK.afterC(20, HEATER_W, 100));
        COMPUTED.put("2.3.6", () -> BLOCK.offTimeS(BAND).orElseThrow());
        COMPUTED.put("2.3.7", () -> BLOCK.onTimeS(BAND, HEATER_W).orElseThrow());
        COMPUTED.put("2.3.8", () -> BLOCK.duty(BAND, HEATER_W));
        COMPUTED.put("2.3.9", () -> BLOCK.holdingPowerW(BAND.middleC()));
        COMPUTED.put("2.3.10", () -> BLOCK.mostTakenW(250, 200, HEATER_W, 30) / FLUID_J_PER_KG / G_PER_MIN);
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("2.3", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @Test
    void aHeaterThatEndsJustAboveTheSetPointReachesItAndOneThatEndsThereDoesNot() {
        assertThat(BLOCK.warmUpS(20, 859.999, HEATER_W)).isPresent();
        assertThat(BLOCK.warmUpS(20, 860, HEATER_W)).isEmpty();
        assertThat(BLOCK.warmUpS(20, 861, HEATER_W)).isEmpty();
        assertThat(BLOCK.warmUpS(20, 21, 0)).isEmpty();
    }

    /** A 400 W heater warming 50 kg of aluminium in a minute: 1.8 K in the minute, more than an hour to 200 degC. */
    @Test
    void aSmallHeaterDoesNotWarmFiftyKilogramsInAMinute() {
        final BlockHeat heavy = new BlockHeat(50 * 900, 1.2, 20);
        assertThat(heavy.afterC(20, 400, 60)).isEqualTo(20.53, within(0.01));
        assertThat(heavy.warmUpS(20, 200, 400).orElseThrow()).isGreaterThan(3_600);
    }

    @Test
    void aWarmBlockNeedsNoWarmUp() {
        assertThat(BLOCK.warmUpS(250, 250, HEATER_W)).hasValue(0);
        assertThat(BLOCK.warmUpS(251, 250, HEATER_W)).hasValue(0);
        assertThat(BLOCK.losslessWarmUpS(251, 250, HEATER_W)).isZero();
    }

    @Test
    void warmUpAndTemperatureAgree() {
        final double warmUpS = BLOCK.warmUpS(35, 230, HEATER_W).orElseThrow();
        assertThat(BLOCK.afterC(35, HEATER_W, warmUpS)).isEqualTo(230, within(1e-9));
        assertThat(BLOCK.afterC(35, HEATER_W, 0)).isEqualTo(35, within(1e-12));
    }

    @Test
    void aThermostatAboveAWeakHeaterNeverSwitchesOffAndOneBelowAmbientNeverOn() {
        assertThat(BLOCK.duty(BAND, 190)).isEqualTo(1);
        assertThat(BLOCK.onTimeS(BAND, 190)).isEmpty();
        assertThat(BLOCK.duty(BAND, 192)).isLessThan(1);
        assertThat(BLOCK.duty(new Thermostat(10, 19), HEATER_W)).isZero();
        assertThat(BLOCK.offTimeS(new Thermostat(20, 30))).isEmpty();
        assertThat(BLOCK.offTimeS(new Thermostat(20.001, 30))).isPresent();
    }

    /** Handbook 2.3: as the band shrinks the duty tends to (T - Ta) / (P R). */
    @Test
    void theDutyOfANarrowBandIsThePartOfThePowerThatIsLost() {
        assertThat(BLOCK.duty(new Thermostat(244.999, 245.001), HEATER_W)).isEqualTo(225.0 / 840, within(1e-8));
    }

    @Test
    void aBurstAtTheLargestFlowEndsExactlyAtTheLimit() {
        final double takenW = BLOCK.mostTakenW(250, 200, HEATER_W, 30);
        assertThat(BLOCK.afterC(250, HEATER_W - takenW, 30)).isEqualTo(200, within(1e-9));
        assertThat(BLOCK.afterC(250, HEATER_W - takenW * 1.001, 30)).isLessThan(200);
        assertThat(BLOCK.longestBurstS(250, 200, HEATER_W - takenW).orElseThrow())
                .isEqualTo(30, within(1e-9));
    }

    @Test
    void aBlockThatIsTooCoolHasNoBurst() {
        assertThat(BLOCK.mostTakenW(199, 200, HEATER_W, 30)).isZero();
        assertThat(BLOCK.mostTakenW(200, 200, HEATER_W, 30)).isEqualTo(HEATER_W - 150, within(1e-9));
        assertThat(BLOCK.longestBurstS(200, 200, -100)).hasValue(0);
        assertThat(BLOCK.longestBurstS(199, 200, -100)).hasValue(0);
        assertThat(BLOCK.mostTakenW(201, 200, 0, 3_600)).isZero();
    }

    @Test
    void aHeaterThatKeepsUpPumpsForEver() {
        assertThat(BLOCK.longestBurstS(250, 200, 150)).isEmpty();
        assertThat(BLOCK.longestBurstS(250, 200, 149.999)).isPresent();
    }

    /** 700 W less 187.5 W of loss; a burst of 10 s at 20 g/min takes 7777 J. */
    @Test
    void sustainableBurstsComeFromTheMeanOfAllHeat() {
        final double takenW = FogFluid.USUAL.powerW(20 * G_PER_MIN, 20);
        assertThat(BLOCK.burstsPerHour(HEATER_W, 245, takenW, 10)).isEqualTo(237.3, within(0.1));
        assertThat(BLOCK.burstsPerHour(187.5, 245, takenW, 10)).isZero();
        assertThat(BLOCK.burstsPerHour(100, 245, takenW, 10)).isZero();
    }

    @Test
    void noMoreBurstsAreSustainedThanFitIntoAnHour() {
        assertThat(BLOCK.burstsPerHour(HEATER_W, 245, 512.5, 10)).isEqualTo(360, within(1e-9));
        assertThat(BLOCK.burstsPerHour(HEATER_W, 245, 100, 10)).isEqualTo(360, within(1e-9));
        assertThat(BLOCK.burstsPerHour(HEATER_W, 245, 513, 10)).isLessThan(360);
    }

    /** Common practice, and nowhere in the formulas: the pauses warm what the bursts have cooled. */
    @Test
    void shortBurstsKeepABlockWarmerThanOneLongBurst() {
        final double takenW = 1_500;
        final double longC = BLOCK.afterC(250, HEATER_W - takenW, 30);
        double coolestC = 250;
        double nowC = 250;
        for (int burst = 0; burst < 6; burst++) {
            nowC = BLOCK.afterC(nowC, HEATER_W - takenW, 5);
            coolestC = Math.min(coolestC, nowC);
            nowC = Math.min(250, BLOCK.afterC(nowC, HEATER_W, 5));
        }
        assertThat(coolestC).isGreaterThan(longC + 15);
    }

    /** The closed form against small steps of the differential equation itself. */
    @Test
    void theClosedFormIsTheDifferentialEquations() {
        final double stepS = 0.001;
        double temperatureC = 20;
        for (int step = 0; step < 100_000; step++) {
            final double middleC = temperatureC + stepS / 2 * slopeKPerS(temperatureC);
            temperatureC += stepS * slopeKPerS(middleC);
        }
        assertThat(BLOCK.afterC(20, HEATER_W, 100)).isEqualTo(temperatureC, within(1e-6));
    }

    private static double slopeKPerS(final double temperatureC) {
        return (HEATER_W - (temperatureC - 20) / 1.2) / 600;
    }

    @Test
    void figuresThatNoBlockHasAreNamed() {
        assertThatThrownBy(() -> new BlockHeat(0, 1.2, 20)).hasMessage("capacityJPerK=0.0 is not above 0");
        assertThatThrownBy(() -> new BlockHeat(600, -1, 20)).hasMessage("resistanceKPerW=-1.0 is not above 0");
        assertThatThrownBy(() -> new BlockHeat(600, 1.2, 61)).hasMessage("ambientC=61.0 is not within -50.0 to 60.0");
        assertThatThrownBy(() -> BLOCK.afterC(20, 700, -1)).hasMessage("timeS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> BLOCK.mostTakenW(250, 200, 700, 0)).hasMessage("burstS=0.0 is not above 0");
        assertThatThrownBy(() -> BLOCK.burstsPerHour(700, 245, 0, 10)).hasMessage("takenW=0.0 is not above 0");
        assertThatThrownBy(() -> new Thermostat(250, 250)).hasMessage("highC=250.0 is not above lowC=250.0");
    }
}
