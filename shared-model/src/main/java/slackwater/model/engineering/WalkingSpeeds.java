package slackwater.model.engineering;

/** Published walking speeds, m/s (handbook 5.4). Nobody measured children below school age; none runs in these. */
public final class WalkingSpeeds {
    /** Highest mean of the adult strata: men of 40 to 49 (case 1; Bohannon and Andrews 2011, Physiotherapy 97(3)). */
    public static final double ADULT_FASTEST_MEAN_M_PER_S = 1.434;
    /** Lowest mean of the adult strata: women of 80 to 99 (case 2; the same). */
    public static final double ADULT_SLOWEST_MEAN_M_PER_S = 0.943;
    /** Pedestrians over 65, mean of 3.81 ft/s (case 3; Gates, Noyce, Bill and Van Ee, TRB 2006). */
    public static final double OVER_65_MEAN_M_PER_S = 1.1613;
    /** Pedestrians over 65, 15th percentile of 3.02 ft/s (case 4; the same). */
    public static final double OVER_65_15TH_M_PER_S = 0.9205;
    /** Younger pedestrians, 15th percentile of 3.77 ft/s (case 5; "Another Look at Pedestrian Walking Speed"). */
    public static final double YOUNGER_15TH_M_PER_S = 1.1491;
    /** Older pedestrians, 15th percentile of 3.03 ft/s (case 6; the same). */
    public static final double OLDER_15TH_M_PER_S = 0.92354;
    /** What crossings with signals used to be designed for, 4.0 ft/s (case 7; older MUTCD, the same). */
    public static final double SIGNAL_DESIGN_M_PER_S = 1.2192;
    /** Children of 7, mean (case 8; pupils of Surabaya, 2022). */
    public static final double AGED_7_MEAN_M_PER_S = 1.30;
    /** Children of 7, standard deviation. */
    public static final double AGED_7_DEVIATION_M_PER_S = 0.21;
    /** Children of 8, mean (case 9; the same). */
    public static final double AGED_8_MEAN_M_PER_S = 1.23;
    /** Children of 8, standard deviation. */
    public static final double AGED_8_DEVIATION_M_PER_S = 0.18;
    /** Children of 11, mean (case 10; the same). */
    public static final double AGED_11_MEAN_M_PER_S = 1.31;
    /** Children of 11, standard deviation. */
    public static final double AGED_11_DEVIATION_M_PER_S = 0.22;
    /** First in a line of kindergarten children, 50 ft in 13.5 s (case 11; "Expectations for Walking Speeds", 2005). */
    public static final double KINDERGARTEN_LINE_M_PER_S = 1.1289;
    /** First in a line of children of the sixth grade, 50 ft in 10.6 s (case 12; the same). */
    public static final double SIXTH_GRADE_LINE_M_PER_S = 1.4377;

    private WalkingSpeeds() {}
}
