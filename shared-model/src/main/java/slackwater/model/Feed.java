package slackwater.model;

import java.time.Duration;
import java.util.Optional;
import slackwater.model.engineering.LoadType;
import slackwater.model.kind.Family;

/**
 * How power comes to a load.
 *
 * @param from the supply or the circuit that feeds it
 * @param cable from there to the load
 * @param through what switches it
 * @param type what it is to the contact; empty for what its family usually is
 */
public record Feed(
        Optional<String> from, Optional<Cable> cable, Optional<SwitchedBy> through, Optional<LoadType> type) {
    public static final Feed UNSAID = new Feed(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** What it is to the contact that switches it, or what the loads of its family mostly are (common practice, no source). */
    public LoadType typeFor(final Family family) {
        return type.orElse(
                switch (family) {
                    case VALVE, AIR_SUPPLY, RELEASE -> LoadType.SOLENOID;
                    case PUMP, FAN -> LoadType.MOTOR;
                    case HEATER, SOUNDER, CONTACT -> LoadType.RESISTIVE;
                    case LAMP -> LoadType.FILAMENT_LAMP;
                    case STROBE, MISTER -> LoadType.CAPACITIVE;
                });
    }

    /**
     * A two-wire copper cable.
     *
     * @param lengthM one way, metres
     * @param wireM2 cross-section of one conductor, m2
     */
    public record Cable(double lengthM, double wireM2) {}

    /**
     * What stands between pin and load.
     *
     * @param ratedA resistive rating, amperes; 0 where it is not told
     * @param pinA current that the pin itself gives, amperes; 0 where it is not told
     * @param operatesIn from the pin's edge to the closed contact
     * @param releasesIn from the pin's edge to the open contact
     * @param bounces how long a closing contact opens again by itself
     */
    public record SwitchedBy(
            Device device, double ratedA, double pinA, Duration operatesIn, Duration releasesIn, Duration bounces) {}

    /** The sort of switch. */
    public enum Device {
        RELAY,
        TRANSISTOR,
        SOLID_STATE_RELAY
    }
}
