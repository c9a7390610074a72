package slackwater.simulator.budget;

/** Rods of standard cylinders: ISO 6432 to 25 mm, ISO 15552 from 32 mm (handbook 1.1, from memory). */
final class StandardRod {
    private static final double[] BORES_M = {0.016, 0.020, 0.025, 0.032, 0.040, 0.050, 0.063};
    private static final double[] RODS_M = {0.006, 0.008, 0.010, 0.012, 0.016, 0.020, 0.020};

    private StandardRod() {}

    /** The rod of the largest standard bore that is not above this one. */
    static double ofBoreM(final double boreM) {
        double rodM = Math.min(RODS_M[0], boreM / 2);
        for (int i = 0; i < BORES_M.length; i++) {
            if (BORES_M[i] <= boreM + 1e-9) {
                rodM = RODS_M[i];
            }
        }
        return rodM;
    }
}
