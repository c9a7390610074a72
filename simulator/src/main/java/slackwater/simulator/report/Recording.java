package slackwater.simulator.report;

import java.util.List;

/**
 * What a recorded waveform says of lines that are high or low.
 *
 * @param lines every one-bit line that the file declares, wanted or not
 * @param changes of the wanted lines, in ascending time; a line's first one is its level from the start
 * @param warnings one line each, for a person
 * @param endNs the last time that the file names
 */
public record Recording(List<Line> lines, List<Change> changes, List<String> warnings, long endNs) {
    public Recording {
        lines = List.copyOf(lines);
        changes = List.copyOf(changes);
        warnings = List.copyOf(warnings);
    }

    /**
     * A one-bit line.
     *
     * @param scope names of the scopes around it, joined by dots; empty at the top
     * @param name as the file writes it
     */
    public record Line(String scope, String name) {}

    /** A wanted line is high or low from this moment, counted in nanoseconds of the recording. */
    public record Change(Line line, long atNs, boolean isHigh) {}
}
