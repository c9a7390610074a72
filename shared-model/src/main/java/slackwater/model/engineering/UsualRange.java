package slackwater.model.engineering;

/**
 * What is usual in the trade, without a source: good for a first guess that is marked as assumed, never for a limit.
 *
 * @param least in the unit that the constant's name ends in
 * @param most at least as much
 */
public record UsualRange(double least, double most) {

    public UsualRange {
        Given.notNegative("least", least);
        Given.require(most >= least && most < Double.POSITIVE_INFINITY, "most", most, "at least " + least);
    }

    /** Half-way between both ends. */
    public double middle() {
        return (least + most) / 2;
    }

    /** Whether a figure is one that surprises nobody; both ends belong to it. */
    public boolean holds(final double value) {
        return value >= least && value <= most;
    }

    /** The same in another unit. */
    UsualRange times(final double factor) {
        return new UsualRange(least * factor, most * factor);
    }
}
