package slackwater.model;

import slackwater.model.kind.Family;

/** What a load is to the contact that switches it (handbook 3.4). */
public enum LoadType {
    RESISTIVE,
    SOLENOID,
    MOTOR,
    FILAMENT,
    CAPACITIVE,
    TRANSFORMER;

    /** What the loads of a family mostly are (common practice, no source). */
    public static LoadType usual(final Family family) {
        return switch (family) {
            case VALVE, AIR_SUPPLY, RELEASE -> SOLENOID;
            case PUMP, FAN -> MOTOR;
            case HEATER, SOUNDER, CONTACT -> RESISTIVE;
            case LAMP -> FILAMENT;
            case STROBE, MISTER -> CAPACITIVE;
        };
    }
}
