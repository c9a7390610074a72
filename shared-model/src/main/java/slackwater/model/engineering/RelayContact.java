package slackwater.model.engineering;

/**
 * A relay's contact and the loads it may switch (handbook 3.4).
 *
 * @param resistiveA rating for a resistive load, amperes
 */
public record RelayContact(double resistiveA) {
    /** Power factor of the inductive load that data sheets usually test with, alternating current. */
    public static final double INDUCTIVE_TEST_POWER_FACTOR = 0.4;

    /** L/R of the inductive load that data sheets usually test with, direct current, seconds. */
    public static final double INDUCTIVE_TEST_TIME_CONSTANT_S = 0.007;

    public RelayContact {
        Given.positive("resistiveA", resistiveA);
    }

    /**
     * The largest steady current of a type of load, amperes: by the one factor where there is one, else so that the
     * highest inrush stays within the rating (the project's own caution, no source).
     */
    public double largestSteadyA(final LoadType type) {
        return resistiveA / type.oneFactor().orElse(type.inrushMultiple().most());
    }

    public boolean carries(final LoadType type, final double steadyA) {
        return Given.notNegative("steadyA", steadyA) <= largestSteadyA(type);
    }
}
