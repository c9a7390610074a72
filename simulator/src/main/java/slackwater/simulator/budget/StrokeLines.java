package slackwater.simulator.budget;

/** Force, time and energy of strokes and returns. */
final class StrokeLines {
    private StrokeLines() {}

    static void add(final Reckoning to) {}
}
