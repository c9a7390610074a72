package slackwater.model.engineering;

/**
 * Air with its water vapour (handbook 2.5). Saturation is over water by Magnus' formula (constants from memory), fit
 * for a yard's weather.
 *
 * @param temperatureC -40 to 50 degrees Celsius
 * @param humidity relative humidity, 0 to 1
 * @param pressurePa 50 kPa to 110 kPa
 */
public record MoistAir(double temperatureC, double humidity, double pressurePa) {
    /** Standard pressure at sea level. */
    public static final double STANDARD_PA = 101_325;

    /** Heat that a kilogram of dry air takes for one kelvin, J/(kg K) (handbook 2.5 case 12). */
    public static final double SPECIFIC_HEAT_J_PER_KG_K = 1_006;

    /** Heat that water takes to evaporate near 20 degC, J/kg (handbook 2.5 case 11). */
    public static final double EVAPORATION_J_PER_KG = 2.45e6;

    /** Psychrometer constant for each pascal of pressure, 1/K (handbook 2.5 case 15). */
    private static final double PSYCHROMETER_PER_K = 6.62e-4;

    private static final double GAS_CONSTANT_J_PER_KG_K = 287.055;
    private static final double VAPOUR_LIGHTER = 0.378;
    private static final double VAPOUR_TO_DRY_MASS = 0.622;
    private static final double ZERO_C_IN_K = 273.15;
    private static final double MAGNUS_PA = 611.2;
    private static final double MAGNUS_FACTOR = 17.62;
    private static final double MAGNUS_C = 243.12;
    private static final double COLDEST_C = -40;
    private static final double BISECTED_K = 1e-9;

    public MoistAir {
        Given.within("temperatureC", temperatureC, COLDEST_C, 50);
        Given.within("humidity", humidity, 0, 1);
        Given.within("pressurePa", pressurePa, 50e3, 110e3);
    }

    /** At sea level. */
    public static MoistAir of(final double temperatureC, final double humidity) {
        return new MoistAir(temperatureC, humidity, STANDARD_PA);
    }

    /** Pressure of vapour that air of this temperature can hold, Pa. */
    public static double saturationPa(final double temperatureC) {
        return MAGNUS_PA * StrictMath.exp(MAGNUS_FACTOR * temperatureC / (MAGNUS_C + temperatureC));
    }

    /** Pressure of the vapour that it holds, Pa. */
    public double vapourPa() {
        return humidity * saturationPa(temperatureC);
    }

    /** Moist air is a little lighter than dry air, kg/m3. */
    public double densityKgPerM3() {
        return (pressurePa - VAPOUR_LIGHTER * vapourPa()) / (GAS_CONSTANT_J_PER_KG_K * (temperatureC + ZERO_C_IN_K));
    }

    /** Mass of vapour in the mass of dry air. */
    public double vapourShare() {
        return VAPOUR_TO_DRY_MASS * vapourPa() / (pressurePa - vapourPa());
    }

    /** Where droplets begin to form when it is chilled, degrees Celsius; minus infinity for dry air. */
    public double dewPointC() {
        if (humidity == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        final double logarithm = StrictMath.log(vapourPa() / MAGNUS_PA);
        return MAGNUS_C * logarithm / (MAGNUS_FACTOR - logarithm);
    }

    /** The lowest temperature that evaporating water can give it, degrees Celsius. */
    public double wetBulbC() {
        double lowC = temperatureC - 60;
        double highC = temperatureC;
        while (highC - lowC > BISECTED_K) {
            final double middleC = (lowC + highC) / 2;
            if (saturationPa(middleC) < vapourPa() + psychrometerPa(temperatureC - middleC)) {
                lowC = middleC;
            } else {
                highC = middleC;
            }
        }
        return highC;
    }

    /** Water that cools it to its wet bulb when it evaporates, kg for each m3: more stays droplets. */
    public double waterToWetBulbKgPerM3() {
        return (temperatureC - wetBulbC()) * heatCapacityJPerM3K() / EVAPORATION_J_PER_KG;
    }

    /**
     * What it becomes when water evaporates in it and nothing else warms it: cooler and moister, at most its wet bulb.
     *
     * @param waterKgPerM3 more than {@link #waterToWetBulbKgPerM3} changes nothing further
     */
    public MoistAir withEvaporated(final double waterKgPerM3) {
        Given.notNegative("waterKgPerM3", waterKgPerM3);
        final double wantedK = waterKgPerM3 * EVAPORATION_J_PER_KG / heatCapacityJPerM3K();
        final double cooledK = Math.min(wantedK, temperatureC - wetBulbC());
        return withVapour(temperatureC - cooledK, vapourPa() + psychrometerPa(cooledK));
    }

    /**
     * What it becomes when it is chilled, saturated below its dew point.
     *
     * @param toC at most its own temperature
     */
    public MoistAir chilledTo(final double toC) {
        Given.within("toC", toC, COLDEST_C, temperatureC);
        return withVapour(toC, vapourPa());
    }

    /** Heat that a cubic metre takes for one kelvin, J/(m3 K). */
    double heatCapacityJPerM3K() {
        return densityKgPerM3() * SPECIFIC_HEAT_J_PER_KG_K;
    }

    private MoistAir withVapour(final double atC, final double vapourPa) {
        final double heldC = Math.max(COLDEST_C, atC);
        return new MoistAir(heldC, Math.min(1, vapourPa / saturationPa(heldC)), pressurePa);
    }

    private double psychrometerPa(final double depressionK) {
        return PSYCHROMETER_PER_K * pressurePa * depressionK;
    }
}
