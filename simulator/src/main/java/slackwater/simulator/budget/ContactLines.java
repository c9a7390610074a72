package slackwater.simulator.budget;

import java.util.List;
import java.util.Optional;
import slackwater.model.Feed;
import slackwater.model.Output;
import slackwater.model.Supply;
import slackwater.model.engineering.LoadType;
import slackwater.model.engineering.RelayContact;

/** Whether the contact that switches a load stands how it starts. */
final class ContactLines {
    private ContactLines() {}

    static void add(final Reckoning to) {
        for (final Output output : to.rig().outputs()) {
            output.load()
                    .feed()
                    .through()
                    .filter(each -> each.ratedA() > 0 && output.load().amps() > 0)
                    .ifPresent(through -> to.add(line(to, output, through)));
        }
    }

    private static Line line(final Reckoning to, final Output output, final Feed.SwitchedBy through) {
        final Optional<LoadType> said = output.load().feed().type();
        final LoadType usual = output.load().feed().typeFor(output.family());
        final LoadType type =
                said.isEmpty() && usual == LoadType.SOLENOID && isDirect(to, output) ? LoadType.RESISTIVE : usual;
        final boolean isRelay = through.device() == Feed.Device.RELAY;
        final double carriesA = isRelay ? new RelayContact(through.ratedA()).largestSteadyA(type) : through.ratedA();
        final double asksA = isRelay ? output.load().amps() : output.load().inrushAmps();
        return new Entry(Line.Group.CONTACTS, "switch of " + output.name())
                .asks(asksA, Measure.AMPERE)
                .has(carriesA, Measure.AMPERE)
                .by(
                        isRelay
                                ? "rating over the load's factor (handbook 3.4)"
                                : "rating against inrush (common practice, no source)")
                .assuming(
                        said.isPresent() || !isRelay
                                ? List.of()
                                : List.of(output.name() + " is "
                                        + type.name()
                                                .toLowerCase(java.util.Locale.ROOT)
                                                .replace('_', ' ')
                                        + " to its contact (common practice, no source); load says it"))
                .advice("a contact rated " + new Amount(through.ratedA() * asksA / carriesA, Measure.AMPERE).text())
                .judged();
    }

    /** Direct current: a coil on it draws no inrush. */
    private static boolean isDirect(final Reckoning to, final Output output) {
        return output.load()
                .feed()
                .from()
                .filter(from -> to.rig().surroundings().supplies().stream()
                        .map(Supply::name)
                        .anyMatch(from::equals))
                .isPresent();
    }
}
