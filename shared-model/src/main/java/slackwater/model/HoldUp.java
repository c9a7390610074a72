package slackwater.model;

import java.time.Duration;
import java.util.OptionalInt;

/**
 * The external relay that feeds the outputs only while it is pulsed (S2).
 *
 * @param pin GPIO that makes the pulses
 * @param dropOut the relay's shortest drop-out: without an edge for so long it may have opened
 * @param seenPin GPIO that reads the relay's auxiliary contact, where there is one; high while the relay is closed
 */
public record HoldUp(OptionalInt pin, Duration dropOut, OptionalInt seenPin) {}
