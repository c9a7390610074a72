package slackwater.simulator.budget;

/** Heat and fluid of fog makers. */
final class FogLines {
    private FogLines() {}

    static void add(final Reckoning to) {}
}
