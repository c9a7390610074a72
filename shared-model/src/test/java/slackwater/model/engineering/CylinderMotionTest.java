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

/** Handbook 1.9: mechanics, and the two closed forms of choked throttles. */
class CylinderMotionTest {
    private static final Cylinder CYLINDER = new Cylinder(0.032, 0.012, 0.1);
    private static final FlowPath THROTTLE = new FlowPath(3e-9, 0.3);
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.9.1", () -> CylinderMotion.kineticEnergyJ(5, 1));
        COMPUTED.put("1.9.2", () -> CylinderMotion.cushionN(2.5, 0.02, 0));
        COMPUTED.put("1.9.3", () -> CylinderMotion.cushionN(2.5, 0.02, 100));
        COMPUTED.put("1.9.4", () -> CylinderMotion.runUpMPerS(200, 10, 0.1));
        COMPUTED.put("1.9.5", () -> CylinderMotion.runUpS(200, 10, 0.1));
        COMPUTED.put("1.9.6", () -> CylinderMotion.meterOutMPerS(THROTTLE, CYLINDER.pullAreaM2()));
        COMPUTED.put("1.9.7", () -> CylinderMotion.meterInMPerS(THROTTLE, 7e5, 2e5, CYLINDER.pushAreaM2()));
        COMPUTED.put("1.9.8", () -> CYLINDER.netLiftN(6e5, 0.1, 20));
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.9", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @Test
    void case1Dot9Dot9SpansTheUsualImpactSpeeds() {
        assertThat(CylinderMotion.IMPACT_OVER_MEAN_SPEED).isEqualTo(new UsualRange(1.3, 1.5));
        assertThat(CheckValue.section("1.9").get(8).expected()).isEqualTo("1.3..1.5");
    }

    @Test
    void case1Dot9Dot10SpansTheUsualSealFriction() {
        assertThat(CylinderMotion.SEAL_FRICTION_SHARE).isEqualTo(new UsualRange(0.05, 0.15));
        assertThat(CheckValue.section("1.9").get(9).expected()).isEqualTo("5..15");
    }

    @Test
    void speedIsTheInverseOfEnergy() {
        assertThat(CylinderMotion.speedMPerS(3, CylinderMotion.kineticEnergyJ(3, 1.2)))
                .isEqualTo(1.2, within(1e-12));
    }

    /** The corner case of the trade: a 3 kg lid that falls 0.30 m arrives at 2.43 m/s with 8.83 J. */
    @Test
    void aFallingLidArrivesWithItsHeightsEnergy() {
        final double weightN = 3 * Cylinder.GRAVITY_M_PER_S2;
        final double arrivesMPerS = CylinderMotion.runUpMPerS(weightN, 3, 0.30);
        assertThat(arrivesMPerS).isEqualTo(2.4257, within(1e-4));
        assertThat(CylinderMotion.kineticEnergyJ(3, arrivesMPerS)).isEqualTo(8.826, within(1e-3));
        assertThat(CylinderMotion.runUpS(weightN, 3, 0.30)).isEqualTo(0.24735, within(1e-5));
    }

    @Test
    void aLoadTooHeavySinks() {
        assertThat(CYLINDER.netLiftN(6e5, 0, 49.2)).isPositive();
        assertThat(CYLINDER.netLiftN(6e5, 0, 49.3)).isNegative();
    }

    @Test
    void meteringInHoldsWhileTheThrottleIsChokedAndNoLonger() {
        assertThat(CylinderMotion.meterInMPerS(THROTTLE, 7e5, 2.1e5, 1e-3)).isEqualTo(1.0, within(1e-9));
        assertThatThrownBy(() -> CylinderMotion.meterInMPerS(THROTTLE, 7e5, 2.2e5, 1e-3))
                .hasMessage("chamberPaAbs=220000.0 is not at most b * supply = 210000.0");
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> CylinderMotion.kineticEnergyJ(0, 1)).hasMessage("massKg=0.0 is not above 0");
        assertThatThrownBy(() -> CylinderMotion.kineticEnergyJ(1, Double.NaN))
                .hasMessage("speedMPerS=NaN is not 0 or more");
        assertThatThrownBy(() -> CylinderMotion.cushionN(1, 0, 0)).hasMessage("cushionM=0.0 is not above 0");
        assertThatThrownBy(() -> CylinderMotion.runUpMPerS(-1, 1, 1)).hasMessage("netN=-1.0 is not above 0");
        assertThatThrownBy(() -> CylinderMotion.runUpS(1, 1, -1)).hasMessage("wayM=-1.0 is not 0 or more");
        assertThatThrownBy(() -> CylinderMotion.meterOutMPerS(THROTTLE, 0)).hasMessage("areaM2=0.0 is not above 0");
        assertThatThrownBy(() -> CYLINDER.netLiftN(6e5, 1, 1))
                .hasMessage("frictionShare=1.0 is not 0 or more and below 1.0");
    }
}
