package slackwater.model;

/**
 * The evening that is reckoned with.
 *
 * @param temperatureC air temperature, degC
 * @param humidity relative humidity, 0 to 1
 * @param windMPerS mean wind at the height of the display, m/s
 * @param windFromDeg where the wind comes from on the plan: 0 along x, 90 along y
 */
public record Weather(double temperatureC, double humidity, double windMPerS, double windFromDeg) {
    /** A mild autumn evening, for a rig that says nothing (common practice, no source). */
    public static final Weather USUAL = new Weather(15, 0.6, 0.5, 0);
}
