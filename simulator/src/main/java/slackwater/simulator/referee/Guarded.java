package slackwater.simulator.referee;

import java.util.List;

/** Which outputs a rule is about. */
final class Guarded {
    private Guarded() {}

    /** Those of the named outputs that are on this controller: an interlock is judged where its outputs are (S13). */
    static boolean[] on(final int controller, final List<String> names, final Wiring wiring) {
        final boolean[] isGuarded = new boolean[wiring.outputs().size()];
        for (final int output : wiring.indicesOf(names)) {
            isGuarded[output] = wiring.controllerOf(output) == controller;
        }
        return isGuarded;
    }

    static boolean[] all(final List<String> names, final Wiring wiring) {
        final boolean[] isGuarded = new boolean[wiring.outputs().size()];
        for (final int output : wiring.indicesOf(names)) {
            isGuarded[output] = true;
        }
        return isGuarded;
    }

    static boolean isAny(final boolean[] isGuarded) {
        for (final boolean is : isGuarded) {
            if (is) {
                return true;
            }
        }
        return false;
    }
}
