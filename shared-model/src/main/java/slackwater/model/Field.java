package slackwater.model;

/**
 * What a motion sensor sees on the plan.
 *
 * @param at where it hangs
 * @param facingDeg the direction it looks in, degrees counter-clockwise from east
 * @param angleDeg the whole opening angle
 * @param rangeM how far it sees, metres
 */
public record Field(Point at, double facingDeg, double angleDeg, double rangeM) {}
