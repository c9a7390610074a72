package slackwater.model.finding;

/**
 * A place in a file.
 *
 * @param file as the person named it
 * @param line one-based
 * @param column one-based
 * @param length characters to underline, at least 1
 */
public record Position(String file, int line, int column, int length) {}
