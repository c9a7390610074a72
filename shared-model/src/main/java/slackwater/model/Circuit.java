package slackwater.model;

import java.util.OptionalDouble;

/**
 * A mains circuit with its breaker.
 *
 * @param volts nominal voltage
 * @param breakerA rating of its breaker, amperes
 * @param groundFaultA what its ground-fault protection trips at, amperes; empty where it has none
 * @param othersA steady current of what is not in the rig, amperes
 */
public record Circuit(String name, double volts, double breakerA, OptionalDouble groundFaultA, double othersA) {}
