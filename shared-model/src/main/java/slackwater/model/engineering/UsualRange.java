package slackwater.model.engineering;

/**
 * From the least to the most that is usually found: where it is common practice without a source, it is good for a
 * first estimate and is to be marked as assumed. The unit is named where the range is.
 *
 * @param lowest belongs to the range, at least 0
 * @param highest belongs to the range, at least {@code lowest}
 */
public record UsualRange(double lowest, double highest) {

    public UsualRange {
        InRange.notNegative(lowest, "lowest");
        InRange.between(highest, lowest, Double.MAX_VALUE, "highest");
    }

    public boolean contains(final double value) {
        return value >= lowest && value <= highest;
    }

    public double middle() {
        return (lowest + highest) / 2;
    }

    UsualRange times(final double factor) {
        return new UsualRange(lowest * factor, highest * factor);
    }
}
