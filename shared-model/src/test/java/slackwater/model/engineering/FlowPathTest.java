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
import org.junit.jupiter.params.provider.ValueSource;

/** Handbook 1.3, ISO 6358-1: the law of two simulation manuals. */
class FlowPathTest {
    /** As a share of the choked flow: 0.0224 for the last pair, which was the worst of 144 pairs with b up to 0.528. */
    private static final double SERIES_ERROR = 0.0225;

    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.3.1", () -> 1_000 * path(2, 0.3).freeFlowM3PerS(7e5, 1.013e5, 293.15));
        COMPUTED.put("1.3.2", () -> 1_000 * path(2, 0.3).massFlowKgPerS(7e5, 1.013e5, 293.15));
        COMPUTED.put("1.3.3", () -> 1_000 * path(2, 0.3).freeFlowM3PerS(7e5, 6e5, 293.15));
        COMPUTED.put("1.3.4", () -> 1_000 * path(2, 0.3).freeFlowM3PerS(7e5, 1.013e5, 273.15));
        COMPUTED.put("1.3.5", () -> 1_000 * path(2, 0.3).freeFlowM3PerS(10e5, 3e5, 293.15));
        COMPUTED.put("1.3.6", () -> path(2, 0.3).freeFlowM3PerS(7e5, 7e5, 293.15));
        COMPUTED.put("1.3.7", () -> 1_000 * path(1, 0.5).freeFlowM3PerS(4e5, 3e5, 293.15));
        COMPUTED.put("1.3.8", () -> 1_000 * path(1, 0.3).freeFlowM3PerS(2e5, 1.98e5, 293.15));
        COMPUTED.put("1.3.9", () -> 1_000 * path(1, 0.3).inSeries(path(1, 0.3)).freeFlowM3PerS(7e5, 1.013e5, 293.15));
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.3", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.5, 0.528})
    void theFlowIsContinuousAtTheCriticalRatio(final double b) {
        final double choked = flow(b, 10e5, 0);
        assertThat(flow(b, 10e5, b * 10e5 * (1 - 1e-9))).isEqualTo(choked);
        assertThat(flow(b, 10e5, b * 10e5 * (1 + 1e-9))).isEqualTo(choked, within(choked * 1e-9));
    }

    /** A hundredth of the way from the critical ratio to 1 the ellipse has lost 1 part in 20000, no sooner. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.5, 0.528})
    void theFlowBeginsToFallJustAboveTheCriticalRatio(final double b) {
        final double choked = flow(b, 10e5, 0);
        assertThat(flow(b, 10e5, 10e5 * (b + 0.01 * (1 - b)))).isEqualTo(choked * 0.99995, within(choked * 1e-8));
        assertThat(flow(b, 10e5, 10e5 * (b + 0.001 * (1 - b)))).isLessThan(choked);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.9})
    void theFlowIsContinuousWhereTheStraightLineBegins(final double b) {
        final double below = flow(b, 7e5, 7e5 * (FlowPath.LINEAR_ABOVE - 1e-12));
        final double above = flow(b, 7e5, 7e5 * (FlowPath.LINEAR_ABOVE + 1e-12));
        assertThat(above).isEqualTo(below, within(below * 1e-6));
    }

    @Test
    void fromThereOnHalfTheDifferenceIsHalfTheFlow() {
        final double whole = flow(0.3, 7e5, 7e5 * 0.9991);
        assertThat(flow(0.3, 7e5, 7e5 * 0.99955)).isEqualTo(whole / 2, within(whole * 1e-9));
        assertThat(flow(0.3, 7e5, 7e5)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.5, 0.998})
    void moreBackPressureNeverGivesMoreFlow(final double b) {
        double before = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= 20_000; step++) {
            final double now = flow(b, 7e5, 7e5 * step / 20_000);
            assertThat(now).isBetween(0.0, before);
            before = now;
        }
    }

    @ParameterizedTest
    @CsvSource({"7e5, 1e5", "7e5, 6e5", "7e5, 6.9999e5", "7e5, 0"})
    void turnedRoundItIsTheSameFlowWithTheOtherSign(final double highPa, final double lowPa) {
        assertThat(flow(0.3, lowPa, highPa)).isNegative().isEqualTo(-flow(0.3, highPa, lowPa));
    }

    @Test
    void twoEmptySidesPassNothing() {
        assertThat(flow(0, 0, 0)).isZero();
        assertThat(flow(0.3, 0, 0)).isZero();
    }

    @Test
    void theFastFormIsTheSameLaw() {
        assertThat(FlowPath.massFlow(2e-8, 0.3, 7e5, 6e5, FlowPath.rootOfT0OverT(273.15)))
                .isEqualTo(path(2, 0.3).massFlowKgPerS(7e5, 6e5, 273.15))
                .isPositive();
        assertThat(FlowPath.massFlow(0, 0.3, 7e5, 6e5, 1)).isZero();
        assertThat(FlowPath.massFlow(2e-8, 0.3, Double.NaN, 6e5, 1)).isNaN();
        assertThat(FlowPath.massFlow(2e-8, 0.3, 7e5, Double.NaN, 1)).isNaN();
    }

    /** Against both laws in a row, the pressure between them found by halving, at every ratio. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.3, 1, 0.3",
        "1, 0.5, 3, 0.2",
        "3, 0.2, 1, 0.5",
        "1, 0.3, 0.2, 0.1",
        "0.2, 0.528, 1, 0.528",
        "1, 0, 1, 0.528"
    })
    void twoInARowPassWhatTheyPassOneAfterTheOther(final double c1, final double b1, final double c2, final double b2) {
        final FlowPath first = path(c1, b1);
        final FlowPath next = path(c2, b2);
        final FlowPath both = first.inSeries(next);
        final double choked = both.massFlowKgPerS(7e5, 0, 293.15);
        for (int step = 0; step <= 100; step++) {
            final double outPa = 7e5 * step / 100;
            assertThat(both.massFlowKgPerS(7e5, outPa, 293.15))
                    .as("to %s Pa", outPa)
                    .isEqualTo(oneAfterTheOther(first, next, outPa), within(choked * SERIES_ERROR));
        }
        assertThat(choked).isEqualTo(oneAfterTheOther(first, next, 0), within(choked * 1e-9));
    }

    @Test
    void aWideFirstOneThatChokesBeforeTheNextGivesTheWholeItsOwnFlow() {
        assertThat(path(1, 0.5).inSeries(path(2, 0.3)).conductanceM3PerSPa()).isEqualTo(1e-8, within(1e-20));
        assertThat(path(1, 0.5).inSeries(path(1.99, 0.3)).conductanceM3PerSPa()).isLessThan(1e-8);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 0.999, 1, Double.NaN})
    void aCriticalRatioThatCannotBeIsRefused(final double b) {
        assertThatThrownBy(() -> path(1, b))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("criticalRatio=" + b + " is not 0 or more and below 0.999");
    }

    @Test
    void otherNonsenseIsRefused() {
        assertThatThrownBy(() -> path(0, 0.3)).hasMessage("conductanceM3PerSPa=0.0 is not above 0");
        assertThatThrownBy(() -> path(Double.NaN, 0.3)).hasMessage("conductanceM3PerSPa=NaN is not above 0");
        assertThatThrownBy(() -> flow(0.3, -1, 0)).hasMessage("p1PaAbs=-1.0 is not 0 or more");
        assertThatThrownBy(() -> flow(0.3, 0, -1)).hasMessage("p2PaAbs=-1.0 is not 0 or more");
        assertThatThrownBy(() -> path(1, 0.3).massFlowKgPerS(7e5, 1e5, 0)).hasMessage("upstreamK=0.0 is not above 0");
        assertThat(path(1, 0).criticalRatio()).isZero();
    }

    private static double oneAfterTheOther(final FlowPath first, final FlowPath next, final double outPa) {
        double lowPa = outPa;
        double highPa = 7e5;
        for (int halving = 0; halving < 80; halving++) {
            final double middlePa = (lowPa + highPa) / 2;
            final double in = first.massFlowKgPerS(7e5, middlePa, 293.15);
            if (in > next.massFlowKgPerS(middlePa, outPa, 293.15)) {
                lowPa = middlePa;
            } else {
                highPa = middlePa;
            }
        }
        return next.massFlowKgPerS(lowPa, outPa, 293.15);
    }

    private static double flow(final double b, final double p1PaAbs, final double p2PaAbs) {
        return path(1, b).massFlowKgPerS(p1PaAbs, p2PaAbs, 293.15);
    }

    private static FlowPath path(final double conductanceDm3PerSBar, final double b) {
        return new FlowPath(conductanceDm3PerSBar * 1e-8, b);
    }
}
