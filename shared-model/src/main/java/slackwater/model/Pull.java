package slackwater.model;

/** The resistor that a computer connects to a pin by itself. */
public enum Pull {
    UP,
    DOWN,
    NONE
}
