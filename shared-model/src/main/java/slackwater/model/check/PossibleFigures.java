package slackwater.model.check;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Weather;
import slackwater.model.finding.Findings;
import slackwater.model.kind.Family;

/** Figures that nothing real can have, before anything is reckoned from them. */
final class PossibleFigures implements Rule {
    private static final List<String> ABOVE_0 =
            List.of("bore", "travel", "moving-mass", "flow", "throttle", "nozzle", "hose-bore", "power", "block");

    /** Specific heat of aluminium, J/(kg K) (from memory). */
    private static final double ALUMINIUM_J_PER_KG_K = 897;

    private static final double USUAL_THERMOSTAT_C = 250;
    private static final double NS_PER_S = 1e9;

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            ABOVE_0.forEach(key -> aboveZero(draft, output, key, findings));
            rodWithinBore(draft, output, findings);
            belowOne(draft, output, "critical-ratio", "air flows choked at any pressure then", findings);
            atMostOne(draft, output, findings);
            if (output.family() == Family.HEATER) {
                heats(draft, output, findings);
            }
        }
    }

    private static void aboveZero(final Draft draft, final Output output, final String key, final Findings findings) {
        final OptionalDouble value = output.facts().si(key);
        if (value.isPresent() && value.getAsDouble() <= 0) {
            error(
                    draft,
                    output,
                    key,
                    findings,
                    Say.quoted(output.name()) + " has 0 for " + Say.quoted(key),
                    "nothing that size moves, flows or heats");
        }
    }

    private static void rodWithinBore(final Draft draft, final Output output, final Findings findings) {
        final OptionalDouble rod = output.facts().si("rod");
        final OptionalDouble bore = output.facts().si("bore");
        if (rod.isPresent() && bore.isPresent() && rod.getAsDouble() >= bore.getAsDouble()) {
            error(
                    draft,
                    output,
                    "rod",
                    findings,
                    "the rod of " + Say.quoted(output.name()) + " is not thinner than its bore",
                    "no air could act on the rod side");
        }
    }

    private static void belowOne(
            final Draft draft, final Output output, final String key, final String why, final Findings findings) {
        final OptionalDouble value = output.facts().si(key);
        if (value.isPresent() && value.getAsDouble() >= 1) {
            error(
                    draft,
                    output,
                    key,
                    findings,
                    Say.quoted(key) + " of " + Say.quoted(output.name()) + " is not below 100 %",
                    why + " (handbook 1.3, ISO 6358: usually 20 to 50 %)");
        }
    }

    private static void atMostOne(final Draft draft, final Output output, final Findings findings) {
        final OptionalDouble value = output.facts().si("glycol");
        if (value.isPresent() && value.getAsDouble() > 1) {
            error(
                    draft,
                    output,
                    "glycol",
                    findings,
                    Say.quoted("glycol") + " of " + Say.quoted(output.name()) + " is above 100 %",
                    "it is a share of the fluid");
        }
    }

    private static void heats(final Draft draft, final Output heater, final Findings findings) {
        final OptionalDouble blockKg = heater.facts().si("block");
        final OptionalDouble powerW = heater.facts().si("power");
        final Optional<Duration> warmsIn = heater.facts().duration("warms-in");
        if (blockKg.isEmpty() || powerW.isEmpty() || warmsIn.isEmpty()) {
            return;
        }
        final double riseK = heater.facts().siOr("thermostat", USUAL_THERMOSTAT_C) - ambientC(draft.rig());
        final double neededJ = blockKg.getAsDouble() * ALUMINIUM_J_PER_KG_K * riseK;
        final double givenJ = powerW.getAsDouble() * warmsIn.get().toNanos() / NS_PER_S;
        if (neededJ > givenJ) {
            findings.error(
                    "impossible-figure",
                    draft.at(Say.table(heater), "warms-in"),
                    Say.words(
                            Say.number(powerW.getAsDouble(), 0) + " W cannot warm the block of "
                                    + Say.quoted(heater.name()) + " in " + Say.time(warmsIn.get()),
                            Say.number(blockKg.getAsDouble(), 2) + " kg of aluminium take "
                                    + Say.number(neededJ / 1000, 0) + " kJ, the heater gives "
                                    + Say.number(givenJ / 1000, 0) + " kJ (specific heat from memory)",
                            "weigh the block, or measure how long it takes; at this power at least "
                                    + Say.number(StrictMath.ceil(neededJ / powerW.getAsDouble()), 0) + " s"));
        }
    }

    private static double ambientC(final Rig rig) {
        return rig.surroundings().weather().orElse(Weather.USUAL).temperatureC();
    }

    private static void error(
            final Draft draft,
            final Output output,
            final String key,
            final Findings findings,
            final String message,
            final String why) {
        findings.error(
                "impossible-figure",
                draft.at(Say.table(output), key),
                Say.words(message, why, "write what its plate or a ruler says, or leave " + key + " out"));
    }
}
