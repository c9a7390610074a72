package slackwater.model;

/**
 * A light beam across the plan.
 *
 * @param from one end
 * @param to the other end
 * @param heightM height above the ground; a person shorter than this passes under it
 */
public record Ray(Point from, Point to, double heightM) {}
