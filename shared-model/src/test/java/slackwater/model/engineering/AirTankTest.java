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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 1.6: a tank that empties and fills; case 11 is a published worked example. */
class AirTankTest {
    private static final double OUTSIDE_PA = 101_325;
    private static final double CUBIC_FOOT = 0.028316846592;
    private static final double CFM = CUBIC_FOOT / 60;
    private static final double PSI = 6_894.757293168;
    private static final AirTank TANK = new AirTank(0.024);
    private static final FlowPath PATH = new FlowPath(1e-8, 0.3);
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.6.1", () -> TANK.timeConstantS(PATH, 293.15));
        COMPUTED.put("1.6.2", () -> TANK.fallTimeS(PATH, 8e5, 4e5, OUTSIDE_PA, 293.15));
        COMPUTED.put(
                "1.6.3",
                () -> TANK.fallTimeS(PATH, 8e5, AirTank.endOfChokingPaAbs(PATH, OUTSIDE_PA), OUTSIDE_PA, 293.15));
        COMPUTED.put(
                "1.6.4",
                () -> TANK.fallTimeS(PATH, AirTank.endOfChokingPaAbs(PATH, OUTSIDE_PA), 1.1e5, OUTSIDE_PA, 293.15));
        COMPUTED.put("1.6.5", () -> TANK.fallTimeS(PATH, 8e5, 1.1e5, OUTSIDE_PA, 293.15));
        COMPUTED.put("1.6.6", () -> TANK.fallTimeS(PATH, 8e5, OUTSIDE_PA, OUTSIDE_PA, 293.15));
        COMPUTED.put("1.6.7", () -> massTimeConstantS());
        COMPUTED.put("1.6.8", () -> AirTank.adiabaticTimeS(massTimeConstantS(), 8e5, 4e5));
        COMPUTED.put("1.6.9", () -> AirTank.adiabaticK(293.15, 8e5, 4e5));
        COMPUTED.put("1.6.10", () -> AirTank.chokedTimeS(massTimeConstantS(), 8e5, 4e5));
        COMPUTED.put(
                "1.6.11",
                () -> AirTank.bridging(300, 100 * CFM, 14.7 * PSI, 100 * PSI, 60 * PSI)
                                .volumeM3()
                        / CUBIC_FOOT);
        COMPUTED.put("1.6.12", () -> TANK.steadyTimeS(2e5, 0.1 / 60, FreeAir.ATMOSPHERE_PA));
        COMPUTED.put("1.6.13", () -> new AirTank(0.05).steadyTimeS(8e5, 0.12 / 60, FreeAir.ATMOSPHERE_PA));
        COMPUTED.put("1.6.14", () -> FreeAir.gaugePa(TANK.afterDrawPaAbs(FreeAir.absolutePa(8e5), drawnM3())) / 1e5);
        COMPUTED.put("1.6.15", () -> new AirTank(5e-4).chokedRisePaPerS(new FlowPath(5e-9, 0.3), 7e5, 293.15) / 1e5);
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.6", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    /** Small steps through the flow law itself, which the closed forms must agree with. */
    @ParameterizedTest
    @CsvSource({"0.3, 8e5, 4e5", "0.3, 8e5, 1.1e5", "0.3, 3e5, 1.1e5", "0, 8e5, 1.1e5", "0.5, 8e5, 1.5e5"})
    void theTimeIsThatOfSmallStepsThroughTheFlowLaw(final double b, final double fromPa, final double toPa) {
        final FlowPath path = new FlowPath(1e-8, b);
        final double stepS = 1e-3;
        double tankPa = fromPa;
        double timeS = 0;
        while (tankPa > toPa) {
            final double leftM3 = path.freeFlowM3PerS(tankPa, OUTSIDE_PA, 293.15) * stepS;
            tankPa = TANK.afterDrawPaAbs(tankPa, leftM3);
            timeS += stepS;
        }
        assertThat(TANK.fallTimeS(path, fromPa, toPa, OUTSIDE_PA, 293.15)).isEqualTo(timeS, within(timeS * 1e-3));
    }

    @Test
    void aColderTankFallsMoreSlowly() {
        assertThat(TANK.timeConstantS(PATH, 273.15)).isEqualTo(24 * 1.035963, within(1e-4));
    }

    @Test
    void pressureAfterATimeIsTheInverseOfTheTime() {
        assertThat(AirTank.adiabaticPaAbs(30, 8e5, AirTank.adiabaticTimeS(30, 8e5, 4e5)))
                .isEqualTo(4e5, within(1e-4));
        assertThat(AirTank.chokedPaAbs(30, 8e5, AirTank.chokedTimeS(30, 8e5, 4e5)))
                .isEqualTo(4e5, within(1e-4));
        assertThat(AirTank.adiabaticPaAbs(30, 8e5, 0)).isEqualTo(8e5);
    }

    @Test
    void noFallTakesNoTime() {
        assertThat(TANK.fallTimeS(PATH, 8e5, 8e5, OUTSIDE_PA, 293.15)).isZero();
        assertThat(TANK.fallTimeS(PATH, 2e5, 2e5, OUTSIDE_PA, 293.15)).isZero();
        assertThat(TANK.steadyTimeS(0, 1, 1e5)).isZero();
    }

    /** A tank of 2 l at 8 bar absolute holds 16 l ANR: at that draw nothing is left, and never less than nothing. */
    @Test
    void aTankGivesNoMoreThanItHolds() {
        assertThat(new AirTank(0.002).afterDrawPaAbs(8e5, 0.0159)).isEqualTo(5_000, within(1e-6));
        assertThat(new AirTank(0.002).afterDrawPaAbs(8e5, 0.016)).isZero();
        assertThat(new AirTank(0.002).afterDrawPaAbs(8e5, 0.02)).isZero();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new AirTank(0)).hasMessage("volumeM3=0.0 is not above 0");
        assertThatThrownBy(() -> new AirTank(Double.NaN)).hasMessage("volumeM3=NaN is not above 0");
        assertThatThrownBy(() -> TANK.fallTimeS(PATH, 8e5, 1e5, OUTSIDE_PA, 293.15))
                .hasMessage("toPaAbs=100000.0 is not within 101325.0 to 800000.0");
        assertThatThrownBy(() -> TANK.fallTimeS(PATH, 4e5, 8e5, OUTSIDE_PA, 293.15))
                .hasMessage("toPaAbs=800000.0 is not within 101325.0 to 400000.0");
        assertThatThrownBy(() -> TANK.fallTimeS(PATH, 8e5, 4e5, 0, 293.15))
                .hasMessage("outsidePaAbs=0.0 is not above 0");
        assertThatThrownBy(() -> AirTank.adiabaticTimeS(30, 4e5, 8e5))
                .hasMessage("toPaAbs=800000.0 is not at most 400000.0");
        assertThatThrownBy(() -> AirTank.bridging(300, -1, 1e5, 8e5, 6e5))
                .hasMessage("netDrawM3PerS=-1.0 is not above 0");
        assertThatThrownBy(() -> AirTank.bridging(300, 1, 1e5, 6e5, 6e5))
                .hasMessage("highPa - lowPa=0.0 is not above 0");
        assertThatThrownBy(() -> TANK.steadyTimeS(1, 0, 1e5)).hasMessage("steadyM3PerS=0.0 is not above 0");
    }

    private static double massTimeConstantS() {
        return TANK.massTimeConstantS(8e5, 293.15, new Orifice(0.002, 1).massFlowKgPerS(8e5, 101_325, 293.15));
    }

    private static double drawnM3() {
        return new Cylinder(0.063, 0.020, 0.3).doubleAirM3(600_000, AirReference.ANR);
    }
}
