package slackwater.model.engineering;

/** Refuses figures that no formula here can use, naming the figure and its value. NaN never passes. */
final class Given {
    private Given() {}

    static double positive(final String name, final double value) {
        return require(value > 0 && value < Double.POSITIVE_INFINITY, name, value, "above 0");
    }

    static double notNegative(final String name, final double value) {
        return require(value >= 0 && value < Double.POSITIVE_INFINITY, name, value, "0 or more");
    }

    static double below(final String name, final double value, final double limit) {
        return require(value >= 0 && value < limit, name, value, "0 or more and below " + limit);
    }

    static double within(final String name, final double value, final double least, final double most) {
        return require(value >= least && value <= most, name, value, "within " + least + " to " + most);
    }

    /** A temperature that a formula of air, water or copper may be given, in degrees Celsius. */
    static double temperature(final String name, final double value) {
        return within(name, value, -273.15, 2_000);
    }

    static double require(final boolean isUsable, final String name, final double value, final String demand) {
        if (!isUsable || Double.isNaN(value)) {
            throw new IllegalArgumentException(name + "=" + value + " is not " + demand);
        }
        return value;
    }
}
