package slackwater.simulator.yard;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Circuit;
import slackwater.model.Feed;
import slackwater.model.Load;
import slackwater.model.Supply;

/** Circuits, supplies and loads in a few words. */
final class MainsWords {
    private MainsWords() {}

    static Circuit circuit(final String name, final double breakerA) {
        return new Circuit(name, 230, breakerA, OptionalDouble.empty(), 0);
    }

    static Supply supply(final String name, final double givesA, final String circuit) {
        return new Supply(name, 12, givesA, Optional.of(circuit), OptionalDouble.of(0.8));
    }

    static Load fedBy(final String source, final double amps) {
        return fedBy(source, amps, amps, Duration.ZERO);
    }

    static Load fedBy(final String source, final double amps, final double inrushA, final Duration lasts) {
        return new Load(
                amps,
                inrushA,
                lasts,
                new Feed(Optional.of(source), Optional.empty(), Optional.empty(), Optional.empty()));
    }
}
