package slackwater.model.quantity;

/**
 * A number with a unit.
 *
 * @param si the value in {@link Dimension#unit()}
 * @param dimension what it measures
 * @param text as the person wrote it, to be shown again as written
 */
public record Quantity(double si, Dimension dimension, String text) {}
