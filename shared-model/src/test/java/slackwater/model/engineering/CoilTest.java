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

/** Handbook 3.5: a 12 V relay of 275 ohm and 2.29 H as published, the rest arithmetic. */
class CoilTest {
    private static final Coil RELAY = new Coil(2.29, 275, 12);
    private static final double ZENER_V = Coil.zenerClampV(24);
    private static final double MS = 1e-3;
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("3.5.1", () -> RELAY.timeConstantS() / MS);
        COMPUTED.put("3.5.2", () -> RELAY.steadyA() * 1e3);
        COMPUTED.put("3.5.3", () -> RELAY.decayS(Coil.DIODE_V, 0.15) / MS);
        COMPUTED.put("3.5.4", () -> RELAY.decayS(ZENER_V, 0.15) / MS);
        COMPUTED.put("3.5.5", () -> RELAY.decayS(0, 0.15) / MS);
        COMPUTED.put("3.5.6", () -> RELAY.decayS(ZENER_V, 0) / MS);
        COMPUTED.put("3.5.7", () -> RELAY.switchV(ZENER_V));
        COMPUTED.put("3.5.8", () -> RELAY.energyJ() * 1e3);
        COMPUTED.put("3.5.9", () -> RELAY.spikeV(0.5 * MS));
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("3.5", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @Test
    void currentAndTimeAgree() {
        final double timeS = RELAY.decayS(Coil.DIODE_V, 0.15);
        assertThat(RELAY.decayA(Coil.DIODE_V, timeS)).isEqualTo(0.15 * RELAY.steadyA(), within(1e-12));
        assertThat(RELAY.decayA(Coil.DIODE_V, 0)).isEqualTo(RELAY.steadyA(), within(1e-15));
        assertThat(RELAY.decayS(Coil.DIODE_V, 1)).isZero();
    }

    @Test
    void theCurrentEndsAndDoesNotTurnBack() {
        final double endS = RELAY.decayS(ZENER_V, 0);
        assertThat(RELAY.decayA(ZENER_V, endS - 1e-6)).isPositive();
        assertThat(RELAY.decayA(ZENER_V, endS + 1e-6)).isZero();
        assertThat(RELAY.decayA(ZENER_V, 1)).isZero();
    }

    @Test
    void aHigherClampReleasesFaster() {
        assertThat(RELAY.decayS(ZENER_V, 0.15)).isLessThan(RELAY.decayS(Coil.DIODE_V, 0.15));
        assertThat(RELAY.decayS(Coil.DIODE_V, 0.15)).isLessThan(RELAY.decayS(0, 0.15));
    }

    @Test
    void anIdealShortNeverEndsTheCurrent() {
        assertThat(RELAY.decayS(0, 1e-6)).isEqualTo(RELAY.timeConstantS() * 13.8155, within(1e-6));
        assertThatThrownBy(() -> RELAY.decayS(0, 0))
                .hasMessage("clampV=0.0 and part=0.0: an ideal short never ends the current");
    }

    /** After one time constant 63.2 % of the steady current flow. */
    @Test
    void theCurrentRisesWithTheTimeConstant() {
        assertThat(RELAY.riseA(RELAY.timeConstantS()) / RELAY.steadyA()).isEqualTo(0.63212, within(1e-5));
        assertThat(RELAY.riseA(0)).isZero();
    }

    /** The closed form against small steps of L di/dt = -R i - Vd. */
    @Test
    void theClosedFormIsTheDifferentialEquations() {
        final double stepS = 1e-7;
        double amps = RELAY.steadyA();
        for (int step = 0; step < 20_000; step++) {
            final double middleA = amps + stepS / 2 * slopeAPerS(amps);
            amps += stepS * slopeAPerS(middleA);
        }
        assertThat(RELAY.decayA(ZENER_V, 2 * MS)).isEqualTo(amps, within(1e-9));
    }

    private static double slopeAPerS(final double amps) {
        return (-275 * amps - 24.7) / 2.29;
    }

    @Test
    void figuresThatNoCoilHasAreNamed() {
        assertThatThrownBy(() -> new Coil(0, 275, 12)).hasMessage("inductanceH=0.0 is not above 0");
        assertThatThrownBy(() -> new Coil(2.29, -1, 12)).hasMessage("resistanceOhm=-1.0 is not above 0");
        assertThatThrownBy(() -> new Coil(2.29, 275, 0)).hasMessage("supplyV=0.0 is not above 0");
        assertThatThrownBy(() -> RELAY.decayS(-0.7, 0.15)).hasMessage("clampV=-0.7 is not 0 or more");
        assertThatThrownBy(() -> RELAY.decayS(0.7, 1.5)).hasMessage("part=1.5 is not within 0.0 to 1.0");
        assertThatThrownBy(() -> RELAY.decayA(0.7, -1)).hasMessage("timeS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> RELAY.spikeV(0)).hasMessage("withinS=0.0 is not above 0");
        assertThatThrownBy(() -> Coil.zenerClampV(0)).hasMessage("zenerV=0.0 is not above 0");
        assertThatThrownBy(() -> RELAY.switchV(-1)).hasMessage("clampV=-1.0 is not 0 or more");
    }
}
