package slackwater.model.check;

import java.time.Duration;
import java.util.Optional;
import slackwater.model.Output;
import slackwater.model.Return;
import slackwater.model.finding.Findings;

/** The return is judged as the strike is: what falls must not land hard (S1, handbook 1.11). */
final class FallingEnergy implements Rule {
    private static final double GRAVITY_M_PER_S2 = 9.80665;
    private static final double NS_PER_S = 1e9;

    /** Handbook 1.11 case 13: ISO 14120:2015, power-operated guard without a protective device (from memory). */
    private static final double MOST_J = 4;

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            final boolean falls = output.rest().onPowerLoss().equals(Optional.of(Return.FALLS))
                    || output.rest().onAirLoss().equals(Optional.of(Return.FALLS));
            final double landsJ = landsJ(output);
            if (falls && landsJ > MOST_J) {
                findings.warning(
                        "falls-hard",
                        draft.at(Say.table(output), "moving-mass"),
                        Say.words(
                                Say.quoted(output.name()) + " falls and lands with " + Say.number(landsJ, 2)
                                        + " J, more than 4 J",
                                "a low-energy door is held to 1.69 J (EN 16005), a power-operated guard to 4 J (ISO"
                                        + " 14120, from memory); both are for healthy adults, not for children"
                                        + " (handbook 1.11)",
                                "throttle the return and write its time as returns-in, lighten it or shorten its"
                                        + " travel"));
            }
        }
    }

    /**
     * Energy on landing. Unthrottled m * g * h; with a stated time t for the way h as if it sped up evenly, m *
     * (2h/t)^2 / 2, which is the same where t is the time of a free fall.
     */
    private static double landsJ(final Output output) {
        final double massKg = output.facts().siOr("moving-mass", 0);
        final double travelM = output.facts().siOr("travel", 0);
        final double freeJ = massKg * GRAVITY_M_PER_S2 * travelM;
        final Optional<Duration> returnsIn = output.facts().duration("returns-in");
        if (returnsIn.isEmpty() || returnsIn.get().isZero()) {
            return freeJ;
        }
        final double speedMPerS = 2 * travelM / (returnsIn.get().toNanos() / NS_PER_S);
        return Math.min(freeJ, massKg * speedMPerS * speedMPerS / 2);
    }
}
