package slackwater.simulator.yard;

/**
 * What is true at this moment, for the referee, the reports and the plants' gauges. Outputs, inputs and controllers are
 * counted in the order of the rig. Knows levels and bodies, and nothing of what a controller believes.
 */
public interface Truth {
    /** The electrical level on an output's pin. */
    boolean isOutputHigh(int output);

    /** The electrical level that a controller finds on an input's pin. A stop loop is found by several controllers. */
    boolean isInputHigh(int input, int controller);

    /** Whether the load has power: pin at its energised level and the controller's output supply alive, or a fault. */
    boolean isPowered(int output);

    /** Whether a controller's output supply is alive: stop loop closed and hold-up relay pulled in. */
    boolean isSupplied(int controller);

    /** How many people stand inside the reach of an output. */
    int peopleInReach(int output);

    /** Whether the output's prop is moving now, by its own drive or on its way back. */
    boolean isMoving(int output);

    /** Kinetic energy of the prop now, joules; 0 where nothing moves. */
    double energyJ(int output);

    /** For a pump: whether the block that it feeds is hot enough; true for everything else. */
    boolean isHotEnough(int output);

    /** For a mister: whether there is water over its discs; true for everything else. */
    boolean hasWater(int output);

    /** For a pump: whether there is fluid in its bottle; true for everything else. */
    boolean hasFluid(int output);

    /** Gauge pressure behind the regulator, pascals; 0 without air. */
    double pressurePa();
}
