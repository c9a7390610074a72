package slackwater.model.file;

import java.time.Duration;
import java.util.Optional;
import slackwater.model.Feed;
import slackwater.model.Load;
import slackwater.model.engineering.LoadType;
import slackwater.model.finding.Findings.Words;
import slackwater.model.quantity.Dimension;

/** Reads the keys that tell what something draws and how the current comes to it. */
final class LoadKeys {
    private LoadKeys() {}

    static Load load(final TableReader reader) {
        final double amps = reader.si("current", Dimension.CURRENT);
        final Optional<Texts.Inrush> inrush = reader.parsed("inrush", Texts.INRUSH, Texts::inrush);
        if (inrush.isPresent() && inrush.get().amps() < amps) {
            reader.error(
                    "inrush-below-current",
                    "inrush",
                    new Words(
                            "the inrush of " + Texts.plain(inrush.get().amps()) + " A is less than the current of "
                                    + Texts.plain(amps) + " A",
                            "a load draws at least its steady current while it starts",
                            "write the larger current, or leave inrush out"));
        }
        final Feed feed = new Feed(
                reader.name("fed-by", Context.Thing.SUPPLY),
                reader.parsed("cable", Texts.CABLE, Texts::cable),
                reader.table("switch").map(LoadKeys::switchedBy),
                reader.word("load", Choices.of(LoadType.class)));
        return inrush.map(start -> new Load(amps, start.amps(), start.lasts(), feed))
                .orElse(new Load(amps, amps, Duration.ZERO, feed));
    }

    private static Feed.SwitchedBy switchedBy(final TableReader reader) {
        reader.require("kind", "a relay and a transistor are judged apart", "add kind = \"relay\"");
        final Feed.SwitchedBy switchedBy = new Feed.SwitchedBy(
                reader.word("kind", Choices.of(Feed.Device.class)).orElse(Feed.Device.RELAY),
                reader.si("rated", Dimension.CURRENT),
                reader.si("pin-current", Dimension.CURRENT),
                reader.duration("operates-in").orElse(Duration.ZERO),
                reader.duration("releases-in").orElse(Duration.ZERO),
                reader.duration("bounces").orElse(Duration.ZERO));
        reader.finish();
        return switchedBy;
    }
}
