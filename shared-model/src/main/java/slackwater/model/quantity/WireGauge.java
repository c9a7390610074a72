package slackwater.model.quantity;

import java.math.BigDecimal;
import java.util.OptionalDouble;

/** American wire gauge: diameter = 0.127 mm * 92^((36 - n) / 39), ASTM B258. */
final class WireGauge {
    private static final int THICKEST = 0;
    private static final int THINNEST = 40;
    private static final double BASE_DIAMETER_M = 0.127e-3;
    private static final double RATIO = 92;
    private static final double BASE_GAUGE = 36;
    private static final double GAUGES_PER_RATIO = 39;

    private WireGauge() {}

    /** Cross-section in square metres; empty when there is no such gauge from 0 to 40. */
    static OptionalDouble areaM2(final BigDecimal gauge) {
        final boolean isWhole = gauge.stripTrailingZeros().scale() <= 0;
        if (!isWhole || gauge.intValue() < THICKEST || gauge.intValue() > THINNEST) {
            return OptionalDouble.empty();
        }
        final double power = (BASE_GAUGE - gauge.intValue()) / GAUGES_PER_RATIO;
        final double diameterM = BASE_DIAMETER_M * StrictMath.pow(RATIO, power);
        return OptionalDouble.of(Math.PI / 4 * diameterM * diameterM);
    }
}
