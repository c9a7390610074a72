package slackwater.simulator.visitor;

/** Moments for tests. */
final class Seconds {
    private Seconds() {}

    static long ns(final double seconds) {
        return StrictMath.round(seconds * 1e9);
    }
}
