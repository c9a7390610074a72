package slackwater.simulator.yard;

/**
 * One stroke of a cylinder out and back, tried on its line while the tank keeps it full.
 *
 * @param outS seconds out; without end where it never arrives
 * @param outJ energy on arriving
 * @param backS seconds back
 * @param backJ energy on arriving
 * @param pushN theoretical force outward
 * @param pullsBackN spring and weight
 * @param frictionN of seals and hinges
 */
public record StrokeTrial(
        double outS, double outJ, double backS, double backJ, double pushN, double pullsBackN, double frictionN) {}
