package slackwater.model.engineering;

/**
 * What small fog makers with a heater block usually do, by their heater's power (handbook 2.4; common practice, no
 * source). A maker's own figures come first.
 *
 * @param powerW the heaters of this class, watts
 * @param warmUpS seconds from cold until it may pump
 */
public record UsualFogMaker(UsualRange powerW, UsualRange warmUpS) {
    public static final UsualFogMaker WATTS_400 = new UsualFogMaker(new UsualRange(400, 400), new UsualRange(120, 240));
    public static final UsualFogMaker WATTS_700_TO_1000 =
            new UsualFogMaker(new UsualRange(700, 1_000), new UsualRange(180, 360));
    public static final UsualFogMaker WATTS_1200_TO_1500 =
            new UsualFogMaker(new UsualRange(1_200, 1_500), new UsualRange(300, 480));

    private static final double KG_PER_S_OF_G_PER_MIN = 1e-3 / 60;

    /** Working temperature of the block, degrees Celsius. */
    public static final UsualRange BLOCK_C = new UsualRange(200, 260);

    /** How long a burst lasts until the thermostat locks the pump out, seconds. */
    public static final UsualRange LONGEST_BURST_S = new UsualRange(20, 60);

    /** From the lock-out until the pump may run again, seconds. */
    public static final UsualRange RECOVERY_S = new UsualRange(30, 120);

    /** Fluid of a 400 W maker while it pumps, kg/s: 5 to 15 g/min. */
    public static final UsualRange FLUID_400_W_KG_PER_S = new UsualRange(5, 15).times(KG_PER_S_OF_G_PER_MIN);

    /** Fluid of a 1000 W maker while it pumps, kg/s: 20 to 40 g/min. */
    public static final UsualRange FLUID_1000_W_KG_PER_S = new UsualRange(20, 40).times(KG_PER_S_OF_G_PER_MIN);

    /** The class of a heater: the first that reaches its power, the strongest above all. */
    public static UsualFogMaker of(final double heaterW) {
        Given.positive("heaterW", heaterW);
        if (heaterW <= WATTS_400.powerW.most()) {
            return WATTS_400;
        }
        return heaterW <= WATTS_700_TO_1000.powerW.most() ? WATTS_700_TO_1000 : WATTS_1200_TO_1500;
    }
}
