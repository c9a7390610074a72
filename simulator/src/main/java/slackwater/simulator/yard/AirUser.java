package slackwater.simulator.yard;

/** Something on a line of compressed air. Amounts are m3 ANR, pressures absolute. */
interface AirUser {
    /**
     * Goes on by one small step at a line pressure that holds for it.
     *
     * @param atNs the step's end
     * @return what it took from the line; negative where it gave back
     */
    double advance(State state, long atNs, double linePaAbs, double stepS);

    /** Whether it stays as it is at this line pressure until somebody switches something. */
    boolean isSettled(State state, long atNs, double linePaAbs);

    /** Whether only a tiny correction is left to its rest at this line pressure. */
    boolean isNear(State state, long atNs, double linePaAbs);

    /** Goes to its rest at this line pressure where that is very near; returns what that took from the line. */
    double settle(State state, long atNs, double linePaAbs);

    /** What is in it. */
    double holdsM3(State state);

    /** What it has let out into the open since the evening began. */
    double ventedM3(State state);
}
