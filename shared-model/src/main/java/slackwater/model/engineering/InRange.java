package slackwater.model.engineering;

/** Refuses a number outside a formula's range, naming it: only a programmer can have let it come so far. */
final class InRange {

    private InRange() {}

    static double positive(final double value, final String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + "=" + value + " is not above 0");
        }
        return value;
    }

    static double notNegative(final double value, final String name) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + "=" + value + " is not 0 or more");
        }
        return value;
    }

    /** Both ends belong to the range. */
    static double between(final double value, final double lowest, final double highest, final String name) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException(name + "=" + value + " is not within " + lowest + " to " + highest);
        }
        return value;
    }

    /** A temperature that a formula of air, water or copper may be given, in degrees Celsius. */
    static double temperature(final double value, final String name) {
        return between(value, -273.15, 2_000, name);
    }
}
