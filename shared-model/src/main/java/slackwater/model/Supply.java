package slackwater.model;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A power supply that feeds low-voltage loads.
 *
 * @param volts what it gives
 * @param givesA the most that it gives, amperes
 * @param fedBy the circuit that feeds it; empty for a battery
 * @param efficiency power out over power in, above 0 and at most 1; empty where it is not told
 */
public record Supply(String name, double volts, double givesA, Optional<String> fedBy, OptionalDouble efficiency) {}
