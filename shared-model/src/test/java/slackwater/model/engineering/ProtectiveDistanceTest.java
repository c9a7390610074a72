package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 6.7, ISO 13855 (edition of 2010). Cases marked M there are from memory. */
class ProtectiveDistanceTest {

    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        // case 1 is the first try, which a yard keeps because children run; case 2 is what the standard then allows
        COMPUTED.put("6.7.1", () -> ProtectiveDistance.yardCurtainMm(0.32, 14));
        COMPUTED.put("6.7.2", () -> ProtectiveDistance.curtainMm(0.32, 14));
        COMPUTED.put("6.7.3", () -> ProtectiveDistance.curtainMm(0.10, 30));
        COMPUTED.put("6.7.4", () -> ProtectiveDistance.curtainMm(0.26, 14));
        COMPUTED.put("6.7.5", () -> ProtectiveDistance.beamsMm(0.20));
        COMPUTED.put("6.7.6", () -> ProtectiveDistance.curtainMm(0.165, 14));
        COMPUTED.put("6.7.7", () -> ProtectiveDistance.floorMm(0.5, 300));
        // sensor 50, controller 20, valve 50 and exhaust 180 ms
        COMPUTED.put("6.7.8", () -> ProtectiveDistance.beamsMm(0.30));
    }

    private static Stream<CheckValue> cases() {
        return CheckValue.computed("6.7", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(CheckWords.of(COMPUTED, value).getAsDouble());
    }

    @Test
    void curtainAtExactlyFiveHundredKeepsAHandsSpeed() {
        assertThat(ProtectiveDistance.curtainMm(0.25, 14)).isEqualTo(500, within(1e-9));
        assertThat(ProtectiveDistance.curtainMm(0.4, 14)).isEqualTo(640, within(1e-9));
    }

    @Test
    void curtainIsNeverNearerThanAHundred() {
        assertThat(ProtectiveDistance.curtainMm(0.04, 14)).isEqualTo(100, within(1e-9));
        assertThat(ProtectiveDistance.yardCurtainMm(0.04, 14)).isEqualTo(100, within(1e-9));
        assertThat(ProtectiveDistance.yardCurtainMm(0.06, 14)).isEqualTo(120, within(1e-9));
    }

    @Test
    void finerThanAFingerIsNoNearer() {
        assertThat(ProtectiveDistance.curtainMm(0.1, 7)).isEqualTo(200, within(1e-9));
    }

    /** Case 8 with a running child's 2 m/s in place of 1.6 m/s: 600 + 850. */
    @Test
    void yardBeamsAreFartherAwayBecauseChildrenRun() {
        assertThat(ProtectiveDistance.yardBeamsMm(0.30)).isEqualTo(1450, within(1e-9));
    }

    /** The floor of 850 mm begins at a height of 875 mm. */
    @ParameterizedTest
    @CsvSource({"0.5, 875, 1650", "0.5, 1000, 1650", "0.5, 874, 1650.4"})
    void floorFieldAddsAtLeastAnArmsReach(final double stopsInS, final double heightMm, final double expectedMm) {
        assertThat(ProtectiveDistance.floorMm(stopsInS, heightMm)).isEqualTo(expectedMm, within(1e-9));
    }

    @Test
    void numbersOutsideTheFormulaAreNamed() {
        assertThatThrownBy(() -> ProtectiveDistance.curtainMm(0.1, 40.1))
                .hasMessage("resolutionMm=40.1 is not within 0 to 40");
        assertThatThrownBy(() -> ProtectiveDistance.curtainMm(0.1, 0))
                .hasMessage("resolutionMm=0.0 is not within 0 to 40");
        assertThatThrownBy(() -> ProtectiveDistance.floorMm(0.1, 1001))
                .hasMessage("heightMm=1001.0 is not within 0 to 1000");
        assertThatThrownBy(() -> ProtectiveDistance.beamsMm(Double.NaN))
                .hasMessage("stopsInS=NaN is not a length of time");
        assertThat(ProtectiveDistance.curtainMm(0.1, 40)).isEqualTo(408, within(1e-9));
    }
}
