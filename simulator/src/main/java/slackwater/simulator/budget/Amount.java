package slackwater.simulator.budget;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A figure of a budget.
 *
 * @param si in SI units
 * @param measure the unit in which it is shown
 */
public record Amount(double si, Measure measure) {
    private static final MathContext SHOWN = new MathContext(3, RoundingMode.HALF_UP);

    /** The number in its own unit. */
    public double number() {
        return si / measure.si();
    }

    /** Three digits and the unit, such as {@code 12.4 l/min}. */
    public String text() {
        final double number = number();
        if (Double.isInfinite(number)) {
            return number > 0 ? "without end" : "none";
        }
        final String digits = digits(number);
        return measure.word().isEmpty() ? digits : digits + " " + measure.word();
    }

    private static String digits(final double number) {
        final BigDecimal rounded = BigDecimal.valueOf(number).round(SHOWN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
