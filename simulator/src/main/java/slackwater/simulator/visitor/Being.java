package slackwater.simulator.visitor;

/** What somebody is, as far as a yard treats them differently. */
public enum Being {
    /** Anybody who is tall enough to be greeted, older children included. */
    ADULT,
    /** To be spared the loud parts; known by being shorter than an upper beam. */
    SMALL_CHILD,
    /** Passes under an upper beam, too, and belongs to somebody. */
    DOG,
    /** Alone and in a hurry, and not here for the show. */
    PARCEL_CARRIER
}
