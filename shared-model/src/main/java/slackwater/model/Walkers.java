package slackwater.model;

/**
 * How measured positions of people are laid onto the plan.
 *
 * @param framesPerSecond recording rate
 * @param metresPerUnit 0.01 for a file in centimetres
 * @param turnDeg rotation about the file's origin, degrees counter-clockwise
 * @param moveBy added after turning
 */
public record Walkers(double framesPerSecond, double metresPerUnit, double turnDeg, Point moveBy) {}
