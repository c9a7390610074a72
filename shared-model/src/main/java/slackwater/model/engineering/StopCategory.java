package slackwater.model.engineering;

/** Ways to stop a machine (handbook 6.5; IEC 60204-1, from memory), and which of them an emergency stop may use (ISO 13850). */
public enum StopCategory {
    /** The actuators lose their power at once, however they then come to rest. */
    CATEGORY_0(PowerOff.AT_ONCE),
    /** Power stays on for a controlled stop, and goes when everything stands. */
    CATEGORY_1(PowerOff.WHEN_STOPPED),
    /** A controlled stop after which the power stays on. */
    CATEGORY_2(PowerOff.NEVER);

    /** When the actuators lose their power. */
    public enum PowerOff {
        AT_ONCE,
        WHEN_STOPPED,
        NEVER
    }

    private final PowerOff powerOff;

    StopCategory(final PowerOff powerOff) {
        this.powerOff = powerOff;
    }

    public PowerOff powerOff() {
        return powerOff;
    }

    /** Only a stop that ends without power may be an emergency stop. */
    public boolean isForEmergencies() {
        return powerOff != PowerOff.NEVER;
    }
}
