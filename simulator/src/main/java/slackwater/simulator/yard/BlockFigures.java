package slackwater.simulator.yard;

import java.util.OptionalDouble;
import slackwater.model.Facts;
import slackwater.model.Output;
import slackwater.model.engineering.BlockHeat;
import slackwater.model.engineering.Thermostat;

/**
 * What is known of a heater's block, and what follows from it.
 *
 * @param block capacity, loss and the air around it
 * @param powerW what it heats with
 * @param thermostat its own
 */
public record BlockFigures(BlockHeat block, double powerW, Thermostat thermostat) {
    /** Handbook 2.3: it switches off at 250 and on again at 240 degC. */
    private static final double USUAL_OFF_C = 250;

    private static final double BAND_K = 10;

    /** Handbook 2.3 case 2: with the power on for ever it ends 840 K above the air; the loss of a block that tells no other. */
    private static final double USUAL_RISE_K = 840;

    private static final double USUAL_POWER_W = 700;
    private static final double USUAL_WARM_UP_S = 240;

    /** Specific heat of aluminium (from memory). */
    private static final double ALUMINIUM_J_PER_KG_K = 897;

    /** A block without any loss is ready soonest; a stated time hardly longer than that says nothing of the loss. */
    private static final double LOSSLESS_TIMES = 1.001;

    /** Of such losses a bisection finds the one asked for: from next to none to so much that it hardly gets hot. */
    private static final int HALVINGS = 100;

    /**
     * From an output's own keys. A block with a mass has its heat, and loses so much that it is ready in the stated time; of
     * one without a mass the loss is as usual and the heat follows from the time. A time that no loss explains is left aside.
     *
     * @param volts of what feeds it, for a heater of which only the current is told
     */
    public static BlockFigures of(final Output heater, final double volts, final double airC) {
        final Facts facts = heater.facts();
        final double toldW = facts.siOr(Fact.POWER, heater.load().amps() * volts);
        final double powerW = toldW > 0 ? toldW : USUAL_POWER_W;
        final double offC = Math.max(facts.siOr(Fact.THERMOSTAT, USUAL_OFF_C), airC + 2 * BAND_K);
        final double riseK = Math.max(USUAL_RISE_K, 2 * (offC - airC));
        final double warmsInS = Fact.secondsOr(facts, Fact.WARMS_IN, USUAL_WARM_UP_S);
        final OptionalDouble massKg = facts.si(Fact.BLOCK);
        final double usualKPerW = riseK / powerW;
        final Thermostat thermostat = new Thermostat(offC - BAND_K, offC);
        if (massKg.isEmpty()) {
            final double tauS = warmsInS / -StrictMath.log(1 - (offC - airC) / riseK);
            return new BlockFigures(new BlockHeat(tauS / usualKPerW, usualKPerW, airC), powerW, thermostat);
        }
        final double capacityJPerK = massKg.getAsDouble() * ALUMINIUM_J_PER_KG_K;
        final boolean isTold = facts.duration(Fact.WARMS_IN).isPresent();
        final boolean isPossible = warmsInS > LOSSLESS_TIMES * capacityJPerK * (offC - airC) / powerW;
        final double kPerW = isTold && isPossible
                ? lossFor(warmsInS, new Sought(capacityJPerK, powerW, offC, airC), usualKPerW)
                : usualKPerW;
        return new BlockFigures(new BlockHeat(capacityJPerK, kPerW, airC), powerW, thermostat);
    }

    private record Sought(double capacityJPerK, double powerW, double offC, double airC) {
        /** Infinite where it never gets so hot. */
        double warmUpS(final double kPerW) {
            return new BlockHeat(capacityJPerK, kPerW, airC)
                    .warmUpS(airC, offC, powerW)
                    .orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** The more kelvin a watt that it loses stands for, the sooner it is warm. */
    private static double lossFor(final double warmsInS, final Sought sought, final double usualKPerW) {
        double slow = 0;
        double fast = usualKPerW;
        while (sought.warmUpS(fast) > warmsInS) {
            fast *= 2;
        }
        for (int i = 0; i < HALVINGS; i++) {
            final double middle = (slow + fast) / 2;
            if (middle > 0 && sought.warmUpS(middle) <= warmsInS) {
                fast = middle;
            } else {
                slow = middle;
            }
        }
        return fast;
    }
}
