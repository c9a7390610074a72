package slackwater.simulator.yard;

/** A fault laid over what an output feeds; the pin itself still shows what was written. */
public enum OutputOverlay {
    /** The output's own contact is welded: the load is on for as long as the controller's output supply is alive. */
    WELDED,
    /** The load is fed past the output supply, by a short to another supply: nothing switches it off. */
    FED_ELSEWHERE,
    /** The load is off whatever the pin does. */
    DEAD
}
