package slackwater.model.engineering;

/**
 * Switches a heater off at the upper temperature and on again at the lower one.
 *
 * @param lowC degrees Celsius
 * @param highC above {@code lowC}
 */
public record Thermostat(double lowC, double highC) {

    public Thermostat {
        Given.temperature("lowC", lowC);
        Given.temperature("highC", highC);
        if (highC <= lowC) {
            throw new IllegalArgumentException("highC=" + highC + " is not above lowC=" + lowC);
        }
    }

    public double middleC() {
        return (lowC + highC) / 2;
    }
}
