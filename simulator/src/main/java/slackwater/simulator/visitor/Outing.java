package slackwater.simulator.visitor;

/**
 * What a group does together, seen from its front rank.
 *
 * @param paceMps the speed of its slowest member
 * @param stopM where it stops, metres along the way
 * @param stayS how long; 0 for not at all
 * @param farthestM where it turns round, or has left with its last rank
 */
record Outing(double paceMps, double stopM, double stayS, double farthestM, boolean comesBack) {}
