package slackwater.model.engineering;

import java.util.OptionalDouble;

/**
 * The heater block of a fog maker as one lump: C dT/dt = P - (T - Ta) / R (handbook 2.3). A flow of fluid takes a
 * constant power while it is pumped, {@link FogFluid#powerW}; the power of a block that heats and pumps is the
 * difference of both and may be negative. That many short bursts keep a fogger warmer than one long burst of the same
 * sum (common practice) follows from this and is put in nowhere.
 *
 * @param capacityJPerK heat that warms the block by one kelvin
 * @param resistanceKPerW kelvin above ambient for each watt that is lost
 * @param ambientC degrees Celsius
 */
public record BlockHeat(double capacityJPerK, double resistanceKPerW, double ambientC) {

    public BlockHeat {
        Given.positive("capacityJPerK", capacityJPerK);
        Given.positive("resistanceKPerW", resistanceKPerW);
        Given.within("ambientC", ambientC, -50, 60);
    }

    /** Seconds until 63 % of a change has happened. */
    public double timeConstantS() {
        return capacityJPerK * resistanceKPerW;
    }

    /** Where the block ends with the power on for ever, degC: it shows why a thermal cut-out is essential. */
    public double finalC(final double powerW) {
        return ambientC + powerW * resistanceKPerW;
    }

    /**
     * The temperature after a time under a constant power, degrees Celsius.
     *
     * @param powerW heater less pumped fluid
     * @param timeS at least 0
     */
    public double afterC(final double fromC, final double powerW, final double timeS) {
        Given.temperature("fromC", fromC);
        final double kept = keptAfter(timeS);
        return finalC(powerW) * (1 - kept) + fromC * kept;
    }

    /**
     * Seconds from one temperature to another under a constant power, upwards or downwards; empty when the block never
     * gets there.
     */
    public OptionalDouble reachesS(final double fromC, final double toC, final double powerW) {
        Given.temperature("fromC", fromC);
        Given.temperature("toC", toC);
        if (fromC == toC) {
            return OptionalDouble.of(0);
        }
        final double remaining = (finalC(powerW) - toC) / (finalC(powerW) - fromC);
        return remaining > 0 && remaining < 1
                ? OptionalDouble.of(-timeConstantS() * StrictMath.log(remaining))
                : OptionalDouble.empty();
    }

    /** Seconds of warm-up: 0 when the block is warm already, empty when the heater is too weak. */
    public OptionalDouble warmUpS(final double fromC, final double toC, final double powerW) {
        return fromC >= toC ? OptionalDouble.of(0) : reachesS(fromC, toC, powerW);
    }

    /** Seconds of warm-up without any loss, always shorter than {@link #warmUpS}. */
    public double losslessWarmUpS(final double fromC, final double toC, final double powerW) {
        return capacityJPerK * Math.max(0, toC - fromC) / Given.positive("powerW", powerW);
    }

    /** Seconds that a thermostat keeps the heater off; empty when the block never cools to its lower temperature. */
    public OptionalDouble offTimeS(final Thermostat thermostat) {
        return reachesS(thermostat.highC(), thermostat.lowC(), 0);
    }

    /** Seconds that a thermostat keeps the heater on; empty when the heater never reaches its upper temperature. */
    public OptionalDouble onTimeS(final Thermostat thermostat, final double powerW) {
        return reachesS(thermostat.lowC(), thermostat.highC(), powerW);
    }

    /** On time in all time, 0 to 1: 1 when the heater is too weak to be switched off, 0 when it is never needed. */
    public double duty(final Thermostat thermostat, final double powerW) {
        final OptionalDouble offS = offTimeS(thermostat);
        if (offS.isEmpty()) {
            return 0;
        }
        final OptionalDouble onS = onTimeS(thermostat, powerW);
        return onS.isEmpty() ? 1 : onS.getAsDouble() / (onS.getAsDouble() + offS.getAsDouble());
    }

    /** The mean power that holds a temperature, W; negative below ambient. */
    public double holdingPowerW(final double atC) {
        return lossW(Given.temperature("atC", atC));
    }

    /**
     * The most power that pumped fluid may take so that the block is no cooler than a temperature after a burst, W
     * (handbook 2.3 case 10); 0 when it is too cool even without a burst.
     *
     * @param heaterW the heater stays on through the burst
     */
    public double mostTakenW(final double fromC, final double notBelowC, final double heaterW, final double burstS) {
        final double kept = keptAfter(Given.positive("burstS", burstS));
        if (Given.temperature("fromC", fromC) < Given.temperature("notBelowC", notBelowC)) {
            return 0;
        }
        final double aimedAtC = (notBelowC - fromC * kept) / (1 - kept);
        return Math.max(0, Given.notNegative("heaterW", heaterW) - lossW(aimedAtC));
    }

    /**
     * Longest burst until the block has cooled to a temperature, seconds; empty when the heater keeps up for ever, 0
     * when the block is too cool to begin.
     *
     * @param powerW heater less pumped fluid
     */
    public OptionalDouble longestBurstS(final double fromC, final double notBelowC, final double powerW) {
        return fromC <= notBelowC ? OptionalDouble.of(0) : reachesS(fromC, notBelowC, powerW);
    }

    /**
     * Bursts an hour that the heater sustains, by the mean of all heat: what is not lost makes fog. At most the bursts
     * that fit into an hour; 0 when the heater cannot even hold the temperature.
     *
     * @param takenW power that the fluid takes while it is pumped
     */
    public double burstsPerHour(final double heaterW, final double atC, final double takenW, final double burstS) {
        Given.positive("takenW", takenW);
        final double fitting = 3_600 / Given.positive("burstS", burstS);
        final double sparedW = Given.notNegative("heaterW", heaterW) - Math.max(0, holdingPowerW(atC));
        return Math.min(fitting, Math.max(0, sparedW) / takenW * fitting);
    }

    private double lossW(final double atC) {
        return (atC - ambientC) / resistanceKPerW;
    }

    private double keptAfter(final double timeS) {
        return StrictMath.exp(-Given.notNegative("timeS", timeS) / timeConstantS());
    }
}
