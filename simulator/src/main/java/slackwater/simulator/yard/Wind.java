package slackwater.simulator.yard;

import java.util.Optional;
import slackwater.model.Weather;
import slackwater.simulator.yard.Draw.Purpose;

/**
 * Wind as a function of the seed and of time: the evening's mean with gusts and a swing of its direction, each a sum of
 * slow waves whose phases are drawn. The gusts make a turbulence of a quarter of the mean (common practice, no source); they
 * never reach still air nor more than 1.6 times the mean.
 */
final class Wind {
    private static final double[] GUST_PERIODS_S = {7.3, 19.1, 53.7};
    private static final double[] GUST_SHARES = {0.15, 0.2, 0.25};
    private static final double[] SWING_PERIODS_S = {11.9, 37.3};
    private static final double[] SWINGS_RAD = {StrictMath.toRadians(10), StrictMath.toRadians(15)};

    private final double meanMPerS;
    private final double towardsRad;
    private final double[] gustPhases;
    private final double[] swingPhases;

    Wind(final Optional<Weather> weather, final long seed) {
        final Weather evening = weather.orElse(Weather.USUAL);
        meanMPerS = evening.windMPerS();
        towardsRad = StrictMath.toRadians(evening.windFromDeg()) + Math.PI;
        gustPhases = phases(seed, 0, GUST_PERIODS_S.length);
        swingPhases = phases(seed, 1, SWING_PERIODS_S.length);
    }

    double meanMPerS() {
        return meanMPerS;
    }

    double speedMPerS(final long atNs) {
        return meanMPerS * (1 + waves(atNs, GUST_SHARES, GUST_PERIODS_S, gustPhases));
    }

    /** Where it blows to on the plan, radians counter-clockwise from x. */
    double towardsRad(final long atNs) {
        return towardsRad + waves(atNs, SWINGS_RAD, SWING_PERIODS_S, swingPhases);
    }

    private static double waves(
            final long atNs, final double[] heights, final double[] periodsS, final double[] phases) {
        double sum = 0;
        for (int i = 0; i < heights.length; i++) {
            sum += heights[i] * StrictMath.sin(2 * Math.PI * (atNs / State.NS_PER_S / periodsS[i] + phases[i]));
        }
        return sum;
    }

    private static double[] phases(final long seed, final long thing, final int count) {
        final double[] phases = new double[count];
        for (int i = 0; i < count; i++) {
            phases[i] = Draw.unit(seed, Purpose.WIND, thing, i);
        }
        return phases;
    }
}
