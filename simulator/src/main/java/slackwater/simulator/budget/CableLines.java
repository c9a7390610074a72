package slackwater.simulator.budget;

import java.util.Optional;
import slackwater.model.Circuit;
import slackwater.model.Feed;
import slackwater.model.Output;
import slackwater.model.Supply;
import slackwater.model.engineering.Copper;
import slackwater.model.engineering.WireRun;

/** Voltage lost on the way to each load. */
final class CableLines {
    private static final double WARM_C = 20;

    private CableLines() {}

    static void add(final Reckoning to) {
        for (final Output output : to.rig().outputs()) {
            final Feed feed = output.load().feed();
            final Optional<Double> volts = feed.from().flatMap(from -> volts(to, from));
            if (volts.isPresent() && output.load().amps() > 0) {
                feed.cable()
                        .ifPresentOrElse(
                                cable -> to.add(drop(output, cable, volts.get())),
                                () -> to.leaveOut(
                                        "the cable of " + output.name() + ": say cable, such as \"12 m of 0.75 mm2\""));
            }
        }
    }

    private static Line drop(final Output output, final Feed.Cable cable, final double volts) {
        final double amps = output.load().amps();
        final double ohmPerM = Copper.ohmPerM(cable.wireM2(), WARM_C);
        final double share = new WireRun(cable.lengthM(), ohmPerM).dropShare(amps, volts);
        final double allowed = WireRun.ADVISED_BRANCH_DROP;
        final double longestM = WireRun.longestM(ohmPerM, amps, allowed * volts);
        final double wireMm2 = cable.wireM2() * 1e6 * share / allowed;
        return new Entry(Line.Group.CABLES, "voltage lost on the way to " + output.name())
                .asks(share, Measure.PERCENT)
                .has(allowed, Measure.PERCENT)
                .by("2 L I R' at 20 degC against 3 % (handbook 3.3; NEC 210.19 note, from memory)")
                .advice("at least " + new Amount(wireMm2, Measure.PIECE).text() + " mm2, or no more than "
                        + new Amount(longestM, Measure.METRE).text())
                .cautioned();
    }

    private static Optional<Double> volts(final Reckoning to, final String from) {
        final Optional<Double> supply = to.rig().surroundings().supplies().stream()
                .filter(each -> each.name().equals(from))
                .map(Supply::volts)
                .findFirst();
        return supply.or(() -> to.rig().surroundings().circuits().stream()
                .filter(each -> each.name().equals(from))
                .map(Circuit::volts)
                .findFirst());
    }
}
