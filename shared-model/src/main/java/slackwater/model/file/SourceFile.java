package slackwater.model.file;

import java.util.List;

/**
 * The text of one file, by lines.
 *
 * @param name as the person named it
 */
record SourceFile(String name, List<String> lines) {

    static SourceFile of(final String name, final String text) {
        return new SourceFile(
                name, text.lines().map(line -> line.replace("\r", "")).toList());
    }

    /** A line by its one-based number; empty when there is none. */
    String line(final int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }
}
