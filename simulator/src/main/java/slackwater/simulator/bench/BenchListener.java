package slackwater.simulator.bench;

import slackwater.model.event.Event;

/** Hears what happens on a bench, in the order in which it happens. Indices count in the order of the rig. */
public interface BenchListener {
    /** An input's line changed at a controller; {@code isActive} by the rig's polarity. */
    default void input(final long atNs, final int input, final int controller, final boolean isActive) {}

    /** An output's pin changed; {@code isEnergised} by the rig's polarity. */
    default void output(final long atNs, final int output, final boolean isEnergised) {}

    /** A controller recorded something. */
    default void event(final int controller, final Event event) {}

    /** Time has come to this moment, and everything at it has been done. */
    default void moment(final long atNs) {}

    /** Nobody listens. */
    BenchListener NOBODY = new BenchListener() {};
}
