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
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.engineering.Detection.First;

/** Handbook 5.3 (plane geometry). */
class DetectionTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("5.3.1", () -> Detection.fanWidthM(110, 3));
        COMPUTED.put("5.3.2", () -> Detection.fanWidthM(60, 3));
        COMPUTED.put("5.3.3", () -> Detection.crossingS(Detection.fanWidthM(60, 3), 1.3));
        COMPUTED.put("5.3.4", () -> Detection.beamBlockedS(0.30, 1.3));
        COMPUTED.put("5.3.5", () -> Detection.crossingS(1.0, 1.3));
        COMPUTED.put("5.3.6", () -> Detection.pairSpeedMPerS(1.0, 0.50));
    }

    private static Stream<CheckValue> cases() {
        return CheckValue.computed("5.3", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(CheckWords.of(COMPUTED, value).getAsDouble());
    }

    /** Handbook 5.3 case 5: A before B is inbound. */
    @Test
    void theBeamThatBreaksFirstTellsTheDirection() {
        assertThat(Detection.pairOrder(10, 10.769)).isEqualTo(First.A);
        assertThat(Detection.pairOrder(10.769, 10)).isEqualTo(First.B);
        assertThat(Detection.pairOrder(10, 10)).isEqualTo(First.NEITHER);
    }

    /** Handbook 5.3 (common practice, no source): 0.15 to 5 s for one metre, 0.2 to 6.7 m/s. */
    @Test
    void timesThatNoWalkerNeedsAreNotOneWalker() {
        assertThat(Detection.isOneWalker(1, 0.149)).isFalse();
        assertThat(Detection.isOneWalker(1, 0.15)).isTrue();
        assertThat(Detection.isOneWalker(1, 5)).isTrue();
        assertThat(Detection.isOneWalker(1, 5.001)).isFalse();
        assertThat(Detection.isOneWalker(0.4, 0.06)).isTrue();
        assertThat(Detection.isOneWalker(0.4, 0.059)).isFalse();
        assertThat(Detection.isOneWalker(0.4, 2)).isTrue();
        assertThat(Detection.isOneWalker(0.4, 2.001)).isFalse();
    }

    /** Own example: seen 2 m along the way, 1.5 m/s, 1.2 s until the lid is up. */
    @Test
    void somebodyWalksOnUntilThePropRevealsItself() {
        assertThat(Detection.atRevealM(2, 1.5, 1.2)).isCloseTo(3.8, within(1e-12));
        assertThat(Detection.atRevealM(2, 1.5, 0)).isEqualTo(2);
    }

    @Test
    void aSensorThatHangsAsFarAheadAsItMustLeavesTheWayThatWasWished() {
        final double aheadM = Detection.sensorAheadM(1.5, 1.2, 2.5);

        assertThat(aheadM).isCloseTo(4.3, within(1e-12));
        assertThat(Detection.atRevealM(-aheadM, 1.5, 1.2)).isCloseTo(-2.5, within(1e-12));
        assertThat(Detection.mostRevealsInS(aheadM, 1.5, 2.5)).isCloseTo(1.2, within(1e-12));
    }

    @Test
    void aSensorTooNearLeavesNoTimeForAnyReveal() {
        assertThat(Detection.mostRevealsInS(2.5, 1.5, 2.5)).isZero();
        assertThat(Detection.mostRevealsInS(1, 1.5, 2.5)).isZero();
    }

    @Test
    void figuresOutsideTheirRangeAreNamed() {
        assertThatThrownBy(() -> Detection.fanWidthM(180, 3)).hasMessage("angleDeg=180.0 is not below 180");
        assertThatThrownBy(() -> Detection.fanWidthM(0, 3)).hasMessage("angleDeg=0.0 is not above 0");
        assertThatThrownBy(() -> Detection.fanWidthM(60, -1)).hasMessage("distanceM=-1.0 is not 0 or more");
        assertThatThrownBy(() -> Detection.crossingS(1, 0)).hasMessage("speedMPerS=0.0 is not above 0");
        assertThatThrownBy(() -> Detection.beamBlockedS(0, 1)).hasMessage("bodyDepthM=0.0 is not above 0");
        assertThatThrownBy(() -> Detection.pairSpeedMPerS(1, 0)).hasMessage("betweenS=0.0 is not above 0");
        assertThatThrownBy(() -> Detection.pairOrder(Double.NaN, 1))
                .hasMessage("brokeAAtS=NaN and brokeBAtS=1.0 are not both moments");
        assertThatThrownBy(() -> Detection.atRevealM(Double.POSITIVE_INFINITY, 1, 1))
                .hasMessage("seenAtM=Infinity is not a place");
        assertThatThrownBy(() -> Detection.atRevealM(0, 1, -1)).hasMessage("revealsInS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> Detection.sensorAheadM(1, 1, -1)).hasMessage("remainsM=-1.0 is not 0 or more");
    }
}
