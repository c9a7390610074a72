package slackwater.simulator.referee;

import java.util.Arrays;
import java.util.stream.IntStream;
import slackwater.model.Input;

/**
 * Reset buttons, arm keys and stand-down buttons as their pins show them. A reset is a release after a press that lasted
 * its proving time, of a button seen open before (S4); an arm is a key's edge to active. A stand-down is a button's edge
 * to active, however short, or a key turned off for so long that its controller has proven it.
 */
final class Buttons {
    private final Wiring wiring;
    private final boolean[][] resets;
    private final boolean[][] arms;
    private final boolean[][] rests;
    private final long[] pressedNs;

    Buttons(final Wiring wiring) {
        this.wiring = wiring;
        final int senses = wiring.senses().size();
        resets = new boolean[senses][wiring.controllers()];
        arms = new boolean[senses][wiring.zones()];
        rests = new boolean[senses][wiring.zones()];
        pressedNs = new long[senses];
        Arrays.fill(pressedNs, Levels.NONE);
        for (final Wiring.Sense sense : wiring.senses()) {
            for (int controller = 0; controller < wiring.controllers(); controller++) {
                resets[sense.index()][controller] = isReset(sense, controller);
            }
            for (int zone = 0; zone < wiring.zones(); zone++) {
                arms[sense.index()][zone] = isArm(sense, zone);
                rests[sense.index()][zone] = isStandDown(sense, zone);
            }
        }
    }

    private Buttons(final Buttons other) {
        wiring = other.wiring;
        resets = other.resets;
        arms = other.arms;
        rests = other.rests;
        pressedNs = other.pressedNs.clone();
    }

    /** A controller is reset by its own button; one without a button by any. */
    private boolean isReset(final Wiring.Sense sense, final int controller) {
        return sense.input().use() == Input.Use.RESET
                && (sense.controller() == controller
                        || wiring.senses().stream()
                                .noneMatch(other ->
                                        other.input().use() == Input.Use.RESET && other.controller() == controller));
    }

    /** A zone is armed by its own key; one without a key by any, and a key without a zone arms all. */
    private boolean isArm(final Wiring.Sense sense, final int zone) {
        final boolean isOfZone = sense.input().zone().isEmpty() || isIn(sense, zone);
        return sense.input().use() == Input.Use.ARM
                && (isOfZone
                        || wiring.senses().stream()
                                .noneMatch(other -> other.input().use() == Input.Use.ARM && isIn(other, zone)));
    }

    /** A controller stands down its own zones; a zone that others share is left to the key or button named for it. */
    private boolean isStandDown(final Wiring.Sense sense, final int zone) {
        final Input.Use use = sense.input().use();
        final boolean isOfZone = sense.input().zone().isEmpty() || isIn(sense, zone);
        return isOfZone
                && (use == Input.Use.STAND_DOWN || use == Input.Use.ARM)
                && IntStream.range(0, wiring.outputs().size())
                        .filter(output -> wiring.zoneOf(output) == zone)
                        .allMatch(output -> wiring.controllerOf(output) == sense.controller());
    }

    private boolean isIn(final Wiring.Sense sense, final int zone) {
        return sense.input().zone().map(wiring::zoneIndex).orElse(-1) == zone;
    }

    /** The longest time that a controller takes to believe that a reset button is released. */
    static long longestReleaseNs(final Wiring wiring) {
        return wiring.senses().stream()
                .filter(sense -> sense.input().use() == Input.Use.RESET)
                .mapToLong(sense -> Wiring.ns(sense.input().proving().inactiveAfter()))
                .max()
                .orElse(0);
    }

    void sensed(final int sense, final Levels levels, final Rule[] rules) {
        final Input input = wiring.senses().get(sense).input();
        if (input.use() == Input.Use.RESET) {
            resetSensed(sense, input, levels, rules);
        } else if (input.use() == Input.Use.ARM && levels.isActive(sense)) {
            for (int zone = 0; zone < wiring.zones(); zone++) {
                if (arms[sense][zone]) {
                    arm(zone, levels, rules);
                }
            }
        } else if (input.use() == Input.Use.ARM) {
            standDownAll(sense, levels.surelyProvenNs(sense, false), levels, rules);
        } else if (input.use() == Input.Use.STAND_DOWN && levels.isActive(sense)) {
            standDownAll(sense, levels.nowNs(), levels, rules);
        }
    }

    private void standDownAll(final int sense, final long surelyNs, final Levels levels, final Rule[] rules) {
        for (int zone = 0; zone < wiring.zones(); zone++) {
            if (rests[sense][zone]) {
                standDown(zone, surelyNs, levels, rules);
            }
        }
    }

    private void resetSensed(final int sense, final Input input, final Levels levels, final Rule[] rules) {
        if (levels.isActive(sense)) {
            pressedNs[sense] = levels.nowNs();
            return;
        }
        final boolean isPress = pressedNs[sense] != Levels.NONE
                && levels.nowNs() - pressedNs[sense]
                        >= Wiring.ns(input.proving().activeAfter());
        for (int controller = 0; isPress && controller < wiring.controllers(); controller++) {
            if (resets[sense][controller]) {
                for (final Rule rule : rules) {
                    rule.reset(controller, levels);
                }
            }
        }
    }

    static void arm(final int zone, final Levels levels, final Rule[] rules) {
        for (final Rule rule : rules) {
            rule.armed(zone, levels);
        }
    }

    static void standDown(final int zone, final long surelyNs, final Levels levels, final Rule[] rules) {
        for (final Rule rule : rules) {
            rule.stoodDown(zone, surelyNs, levels);
        }
    }

    Buttons copy() {
        return new Buttons(this);
    }
}
