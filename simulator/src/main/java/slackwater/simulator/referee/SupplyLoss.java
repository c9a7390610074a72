package slackwater.simulator.referee;

import slackwater.simulator.yard.Truth;

/**
 * An output supply that went away by itself, as when a hold-up relay drops because its pulses stayed away (S2). When it
 * comes back nothing may be powered by it again before a reset: a prop must not fire a second time because a computer woke up.
 * An opened stop loop takes the supply away too and is judged as a stop.
 */
final class SupplyLoss extends Rule {
    private final int[] controllerOf;
    private final boolean[] isJudged;
    private final boolean[] wasSupplied;
    private final boolean[] isLost;
    private final boolean[] wasPowered;

    SupplyLoss(final Wiring wiring) {
        final int outputs = wiring.outputs().size();
        controllerOf = new int[outputs];
        isJudged = new boolean[outputs];
        for (int output = 0; output < outputs; output++) {
            controllerOf[output] = wiring.controllerOf(output);
            isJudged[output] = StopAndArm.isWaiting(wiring.output(output).family());
        }
        wasSupplied = new boolean[wiring.controllers()];
        isLost = new boolean[wiring.controllers()];
        wasPowered = new boolean[outputs];
    }

    private SupplyLoss(final SupplyLoss other) {
        controllerOf = other.controllerOf;
        isJudged = other.isJudged;
        wasSupplied = other.wasSupplied.clone();
        isLost = other.isLost.clone();
        wasPowered = other.wasPowered.clone();
    }

    @Override
    void reset(final int controller, final Levels levels) {
        isLost[controller] = false;
    }

    @Override
    void plants(final Truth truth, final Levels levels, final Log log) {
        for (int controller = 0; controller < wasSupplied.length; controller++) {
            final boolean isSupplied = truth.isSupplied(controller);
            isLost[controller] |= wasSupplied[controller] && !isSupplied;
            wasSupplied[controller] = isSupplied;
        }
        for (int output = 0; output < wasPowered.length; output++) {
            final boolean isPowered = truth.isPowered(output);
            final boolean isByPin = levels.isEnergised(output);
            if (isJudged[output] && isPowered && !wasPowered[output] && isByPin && isLost[controllerOf[output]]) {
                log.add(
                        RuleWords.SUPPLY_LOST,
                        levels.wiring().outputName(output),
                        levels.nowNs(),
                        "powered again without a reset since its supply went away");
            }
            wasPowered[output] = isPowered;
        }
    }

    @Override
    SupplyLoss copy() {
        return new SupplyLoss(this);
    }
}
