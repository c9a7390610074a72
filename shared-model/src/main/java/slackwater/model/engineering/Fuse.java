package slackwater.model.engineering;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** The fuse of a low-voltage circuit (handbook 3.7). */
public enum Fuse {
    /** UL 248-14: carries three quarters of its rating continuously (from memory). */
    UL(0.75),
    /** IEC 60127: carries its whole rating continuously (from memory). */
    IEC(1.0);

    /** Fuse in multiples of the running current, never above the wire's rating (common practice, no source). */
    public static final UsualRange RULE_OF_THUMB = new UsualRange(1.25, 1.5);

    private static final double[] UL_A = {0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 5, 7, 10, 15, 20};
    private static final double[] IEC_A = {0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10};

    private final double carries;

    Fuse(final double carries) {
        this.carries = carries;
    }

    /** What it carries continuously, in parts of its rating. */
    public double carries() {
        return carries;
    }

    /** The least rating for a continuous current, amperes. */
    public double leastA(final double continuousA) {
        return Given.notNegative("continuousA", continuousA) / carries;
    }

    /**
     * The smallest usual rating (the list is from memory) that carries a current and keeps the rule of thumb, amperes;
     * empty when it would not protect the wire or is not made.
     *
     * @param wireA what the thinnest wire behind the fuse may carry
     */
    public OptionalDouble choiceA(final double continuousA, final double wireA) {
        Given.positive("wireA", wireA);
        final double atLeastA = Math.max(leastA(continuousA), continuousA * RULE_OF_THUMB.least());
        return DoubleStream.of(this == UL ? UL_A : IEC_A)
                .filter(ratingA -> ratingA >= atLeastA && ratingA <= wireA)
                .findFirst();
    }
}
