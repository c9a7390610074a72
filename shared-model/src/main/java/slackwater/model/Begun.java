package slackwater.model;

/** What an interlock does to a stroke that has already begun (S1). */
public enum Begun {
    /** Goes to rest at once. */
    REST,
    /** No new start; stays until clear or until its longest on. Required where the return moves into the reach. */
    FINISH
}
