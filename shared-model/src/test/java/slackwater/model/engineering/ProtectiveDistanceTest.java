package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Handbook 6.7, ISO 13855 (edition of 2010). Cases marked M there are from memory. */
class ProtectiveDistanceTest {

    /**
     * Cases 1 and 2 (worked example of a light curtain's manual: 640 first, then 512), 3 (the first branch), 4 (not
     * below 500), 6 (a press).
     */
    @ParameterizedTest
    @CsvSource({"0.32, 14, 512", "0.10, 30, 328", "0.26, 14, 500", "0.165, 14, 330"})
    void lightCurtainIsTheStandards(final double stopsInS, final double resolutionMm, final double expectedMm) {
        assertThat(ProtectiveDistance.curtainMm(stopsInS, resolutionMm)).isEqualTo(expectedMm, within(1e-9));
    }

    /** Case 1 on its own: with a hand's speed throughout, as a yard uses it, the first try of 640 mm stands. */
    @Test
    void yardCurtainKeepsTheFirstTry() {
        assertThat(ProtectiveDistance.yardCurtainMm(0.32, 14)).isEqualTo(640, within(1e-9));
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

    /** Cases 5 and 8 (sensor 50, controller 20, valve 50, exhaust 180 ms). */
    @ParameterizedTest
    @CsvSource({"0.20, 1170", "0.30, 1330"})
    void beamsAreTheStandards(final double stopsInS, final double expectedMm) {
        assertThat(ProtectiveDistance.beamsMm(stopsInS)).isEqualTo(expectedMm, within(1e-9));
    }

    /** Case 8 with a running child's 2 m/s in place of 1.6 m/s: 600 + 850. */
    @Test
    void yardBeamsAreFartherAwayBecauseChildrenRun() {
        assertThat(ProtectiveDistance.yardBeamsMm(0.30)).isEqualTo(1450, within(1e-9));
    }

    /** Case 7 (M), and the floor of 850 mm, which begins at a height of 875 mm. */
    @ParameterizedTest
    @CsvSource({"0.5, 300, 1880", "0.5, 875, 1650", "0.5, 1000, 1650", "0.5, 874, 1650.4"})
    void floorFieldIsTheStandards(final double stopsInS, final double heightMm, final double expectedMm) {
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
