package slackwater.simulator.visitor;

import java.util.List;
import slackwater.model.engineering.WalkingSpeeds;

/**
 * A published walking speed.
 *
 * @param meanMps metres a second
 * @param deviationMps standard deviation, metres a second
 */
record Pace(double meanMps, double deviationMps) {
    /** Standard deviations between the mean and the 15th percentile of a normal distribution. */
    private static final double TO_15TH_PERCENTILE = 1.0364;

    /** Handbook 5.4 cases 3 and 4 (Gates and others 2006): mean and 15th percentile give the deviation. */
    static final Pace OVER_65 = new Pace(
            WalkingSpeeds.OVER_65_MEAN_M_PER_S,
            (WalkingSpeeds.OVER_65_MEAN_M_PER_S - WalkingSpeeds.OVER_65_15TH_M_PER_S) / TO_15TH_PERCENTILE);

    /**
     * Handbook 5.4 case 5, the 15th percentile of younger pedestrians, and the deviation of the older ones: a mean of
     * 1.390 m/s, inside the adult strata of cases 1 and 2 (Bohannon and Andrews 2011), 0.943 to 1.434 m/s.
     */
    static final Pace YOUNGER = new Pace(
            WalkingSpeeds.YOUNGER_15TH_M_PER_S + TO_15TH_PERCENTILE * OVER_65.deviationMps(), OVER_65.deviationMps());

    /** Handbook 5.4 cases 8 to 10, ages 7, 8 and 11: the youngest that were measured; taken for small children, too. */
    static final List<Pace> CHILDREN = List.of(
            new Pace(WalkingSpeeds.AGED_7_MEAN_M_PER_S, WalkingSpeeds.AGED_7_DEVIATION_M_PER_S),
            new Pace(WalkingSpeeds.AGED_8_MEAN_M_PER_S, WalkingSpeeds.AGED_8_DEVIATION_M_PER_S),
            new Pace(WalkingSpeeds.AGED_11_MEAN_M_PER_S, WalkingSpeeds.AGED_11_DEVIATION_M_PER_S));

    double drawMps(final Chance chance) {
        return meanMps + deviationMps * chance.deviate();
    }
}
