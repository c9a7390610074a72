package slackwater.simulator.yard;

/** A plant with a part that could touch somebody. */
interface Prop extends Plant {
    /** Standard gravity, m/s2 (ISO 80000-3; from memory). */
    double GRAVITY = 9.80665;

    boolean isMoving(State state);

    /** Kinetic energy now, joules. */
    double energyJ(State state);

    /** Kinetic energy with which it last came to the end of its travel or of its fall, joules; 0 before. */
    default double landedJ(final State state) {
        return 0;
    }
}
