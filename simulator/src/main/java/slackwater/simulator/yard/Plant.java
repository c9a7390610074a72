package slackwater.simulator.yard;

/**
 * Something in the yard that goes its own way. Immutable: what changes stands in the {@link State}. A step without any
 * change of power, before the moment told by {@link #wakesNs}, must leave the state as it is to the last bit.
 */
interface Plant {
    /** Never by itself. */
    long ASLEEP = Long.MAX_VALUE;

    /** Goes on to the grid point {@code state.nowNs()}. */
    void step(State state);

    /** No later than the first grid point at which a step changes something by itself; the past means the next one. */
    long wakesNs(State state);
}
