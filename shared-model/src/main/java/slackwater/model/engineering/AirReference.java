package slackwater.model.engineering;

/** The three states at which people count litres of air; they differ by up to 9 % (handbook 0.1, ISO 8778). */
public enum AirReference {
    /** 20 degC and 100 kPa (ISO 8778): what valve makers print and what every flow here is counted in. */
    ANR(100_000, 293.15),
    /** 20 degC and 101.325 kPa: what compressor makers mean by free air delivered. */
    FREE_AIR(101_325, 293.15),
    /** The normal litre: 0 degC and 101.325 kPa. */
    NORMAL(101_325, 273.15);

    private final double pressurePa;
    private final double temperatureK;

    AirReference(final double pressurePa, final double temperatureK) {
        this.pressurePa = pressurePa;
        this.temperatureK = temperatureK;
    }

    /** Absolute pressure of the state, Pa. */
    public double pressurePa() {
        return pressurePa;
    }

    /** Temperature of the state, K. */
    public double temperatureK() {
        return temperatureK;
    }

    /**
     * The same amount of air counted at another state: ideal gas (handbook 0.1). Works for m3 and for m3/s.
     *
     * @param m3 volume counted at this state, 0 or more
     */
    public double toM3(final double m3, final AirReference other) {
        Given.notNegative("m3", m3);
        return m3 * (pressurePa / other.pressurePa) * (other.temperatureK / temperatureK);
    }

    /**
     * The volume, counted at this state, of air that fills a space.
     *
     * @param m3 the space, m3, 0 or more
     * @param pressurePaAbs absolute pressure in it, Pa, 0 or more
     * @param airK temperature in it, K, above 0
     */
    public double ofSpaceM3(final double m3, final double pressurePaAbs, final double airK) {
        Given.notNegative("m3", m3);
        Given.notNegative("pressurePaAbs", pressurePaAbs);
        Given.positive("airK", airK);
        return m3 * (pressurePaAbs / pressurePa) * (temperatureK / airK);
    }
}
