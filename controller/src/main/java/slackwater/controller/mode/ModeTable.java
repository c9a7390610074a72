package slackwater.controller.mode;

import slackwater.model.Mode;
import slackwater.model.kind.Family;

/**
 * What each mode allows each family of output (S15). Heaters warm only by their own permission; a fan's after-run is allowed
 * at rest, never in stop, fault, lockout or on the bench; an air supply opens only when armed; nothing at all in stop, fault
 * or lockout.
 */
public final class ModeTable {
    private ModeTable() {}

    /**
     * Whether an output of the family may be energised.
     *
     * @param isWarming whether the zone's heaters have their own permission to warm while it rests
     */
    public static boolean allows(final Family family, final Mode mode, final boolean isWarming) {
        return switch (mode) {
            case STOPPED, FAULTED, LOCKED_OUT -> false;
            case BENCH -> allowsOnBench(family);
            case WARNING -> allowsInWarning(family);
            case ARMED -> true;
            case RESTING -> family == Family.FAN || (family == Family.HEATER && isWarming);
        };
    }

    /** On the bench air and mains are off, so what feeds or heats stays at rest. */
    private static boolean allowsOnBench(final Family family) {
        return switch (family) {
            case AIR_SUPPLY, HEATER -> false;
            case VALVE, PUMP, STROBE, LAMP, FAN, MISTER, RELEASE, SOUNDER, CONTACT -> true;
        };
    }

    private static boolean allowsInWarning(final Family family) {
        return switch (family) {
            case HEATER, LAMP, SOUNDER, FAN -> true;
            case VALVE, AIR_SUPPLY, PUMP, STROBE, MISTER, RELEASE, CONTACT -> false;
        };
    }
}
