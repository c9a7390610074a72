package slackwater.simulator.visitor;

import java.util.List;

/**
 * A published walking speed.
 *
 * @param meanMps metres a second
 * @param deviationMps standard deviation, metres a second
 */
record Pace(double meanMps, double deviationMps) {
    /** Standard deviations between the mean and the 15th percentile of a normal distribution. */
    private static final double TO_15TH_PERCENTILE = 1.0364;

    private static final double OVER_65_MEAN_MPS = 1.1613;
    private static final double OVER_65_15TH_MPS = 0.9205;
    private static final double YOUNGER_15TH_MPS = 1.1491;

    /** Handbook 5.4 cases 3 and 4 (Gates and others 2006): mean and 15th percentile give the deviation. */
    static final Pace OVER_65 = new Pace(OVER_65_MEAN_MPS, (OVER_65_MEAN_MPS - OVER_65_15TH_MPS) / TO_15TH_PERCENTILE);

    /**
     * Handbook 5.4 case 5, the 15th percentile of younger pedestrians, and the deviation of the older ones: a mean of
     * 1.390 m/s, inside the adult strata of cases 1 and 2 (Bohannon and Andrews 2011), 0.943 to 1.434 m/s.
     */
    static final Pace YOUNGER =
            new Pace(YOUNGER_15TH_MPS + TO_15TH_PERCENTILE * OVER_65.deviationMps(), OVER_65.deviationMps());

    /** Handbook 5.4 cases 8 to 10, ages 7, 8 and 11: the youngest that were measured; taken for small children, too. */
    static final List<Pace> CHILDREN = List.of(new Pace(1.30, 0.21), new Pace(1.23, 0.18), new Pace(1.31, 0.22));

    double drawMps(final Chance chance) {
        return meanMps + deviationMps * chance.deviate();
    }
}
