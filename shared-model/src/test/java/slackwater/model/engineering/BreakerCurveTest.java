package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** IEC 60898-1 and UL 489: every figure from memory. */
class BreakerCurveTest {
    private static final double HOUR_S = 3_600;

    @ParameterizedTest
    @EnumSource
    void itHoldsTheConventionalCurrentAndTripsAtTheOther(final BreakerCurve curve) {
        assertThat(curve.tripsAfterS(1)).isEmpty();
        assertThat(curve.tripsAfterS(1.13)).isEmpty();
        assertThat(curve.tripsAfterS(1.45).orElseThrow()).isLessThan(HOUR_S);
        assertThat(curve.tripsAfterS(2.55).orElseThrow()).isBetween(1.0, 60.0);
    }

    @ParameterizedTest
    @EnumSource
    void itAlsoKeepsThePointsOfTheAmericanStandard(final BreakerCurve curve) {
        assertThat(curve.tripsAfterS(1.35).orElseThrow()).isLessThan(HOUR_S);
        assertThat(curve.tripsAfterS(2).orElseThrow()).isLessThan(120);
    }

    /** The heat of 1.28 times the rated current for ever lies just at the threshold. */
    @Test
    void theThresholdIsAtOnePointTwoEight() {
        final double limit = StrictMath.sqrt(BreakerCurve.TRIPS_AT_HEAT);
        assertThat(limit).isEqualTo(1.28, within(0.001));
        assertThat(BreakerCurve.B.tripsAfterS(limit * 0.999)).isEmpty();
        assertThat(BreakerCurve.B.tripsAfterS(limit * 1.001)).isPresent();
    }

    @ParameterizedTest
    @CsvSource({"B, 3, 5", "C, 5, 10"})
    void theMagnetTripsAtOnceFromItsMultiple(final BreakerCurve curve, final double mayFrom, final double from) {
        assertThat(curve.mayTripAtOnceFrom()).isEqualTo(mayFrom);
        assertThat(curve.tripsAtOnceFrom()).isEqualTo(from);
        assertThat(curve.tripsAfterS(mayFrom - 0.001).orElseThrow()).isGreaterThan(5);
        assertThat(curve.tripsAfterS(mayFrom)).hasValue(BreakerCurve.AT_ONCE_S);
        assertThat(curve.tripsAfterS(from)).hasValue(BreakerCurve.AT_ONCE_S);
    }

    @Test
    void aWarmBreakerTripsSooner() {
        final double coldS = BreakerCurve.B.tripsAfterS(2).orElseThrow();
        assertThat(BreakerCurve.B.tripsAfterS(2, 0)).hasValue(coldS);
        assertThat(BreakerCurve.B.tripsAfterS(2, 0.64).orElseThrow()).isLessThan(coldS - 10);
        assertThat(BreakerCurve.B.tripsAfterS(0, BreakerCurve.TRIPS_AT_HEAT)).hasValue(0);
        assertThat(BreakerCurve.B.tripsAfterS(0, BreakerCurve.TRIPS_AT_HEAT * 0.999))
                .isEmpty();
    }

    @Test
    void timeAndHeatAgree() {
        final double tripsS = BreakerCurve.C.tripsAfterS(2.55, 0.5).orElseThrow();
        assertThat(BreakerCurve.heatAfter(0.5, 2.55, tripsS)).isEqualTo(BreakerCurve.TRIPS_AT_HEAT, within(1e-12));
        assertThat(BreakerCurve.heatAfter(0.5, 2.55, 0)).isEqualTo(0.5, within(1e-15));
        assertThat(BreakerCurve.heatAfter(0, 1, 1e6)).isEqualTo(1, within(1e-12));
        assertThat(BreakerCurve.heatAfter(1, 0, 1e6)).isEqualTo(0, within(1e-12));
    }

    /** A plant steps it: many small steps are one large one. */
    @Test
    void manyStepsAreOne() {
        double heat = 0.2;
        for (int step = 0; step < 1_000; step++) {
            heat = BreakerCurve.heatAfter(heat, 1.2, 0.05);
        }
        assertThat(heat).isEqualTo(BreakerCurve.heatAfter(0.2, 1.2, 50), within(1e-12));
    }

    @Test
    void figuresThatNoCurrentHasAreNamed() {
        assertThatThrownBy(() -> BreakerCurve.B.tripsAfterS(-1)).hasMessage("multiple=-1.0 is not 0 or more");
        assertThatThrownBy(() -> BreakerCurve.B.tripsAfterS(1, -1)).hasMessage("heat=-1.0 is not 0 or more");
        assertThatThrownBy(() -> BreakerCurve.heatAfter(0, 1, -1)).hasMessage("timeS=-1.0 is not 0 or more");
    }
}
