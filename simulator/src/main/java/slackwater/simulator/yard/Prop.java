package slackwater.simulator.yard;

/** A plant with a part that could touch somebody. */
interface Prop extends Plant {
    /** Standard gravity, m/s2 (ISO 80000-3; from memory). */
    double GRAVITY = 9.80665;

    boolean isMoving(State state);

    /** Kinetic energy now, joules. */
    double energyJ(State state);
}
