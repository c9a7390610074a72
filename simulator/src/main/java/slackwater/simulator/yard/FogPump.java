package slackwater.simulator.yard;

import java.util.List;
import java.util.Optional;
import slackwater.model.Output;
import slackwater.simulator.yard.Draw.Purpose;

/** The puffs of a fog pump, as far as they drift into light beams and make them read blocked (S23). */
final class FogPump implements Plant {
    /** Fog drifts no farther before it has thinned out (common practice, no source). */
    private static final double DRIFTS_M = 2;

    private static final double HITS_SHARE = 0.3;
    private static final double LEAST_S = 1;
    private static final double MOST_S = 3;
    private static final double LATEST_S = 2;
    private static final int DRAWS = 3;

    private final int output;
    private final Optional<HeaterBlock> heater;
    private final List<Beam> beams;
    private final long seed;
    private final int puffs;
    private final int wasOn;

    FogPump(
            final int output,
            final Optional<HeaterBlock> heater,
            final List<Beam> beams,
            final long seed,
            final Slots slots) {
        this.output = output;
        this.heater = heater;
        this.beams = List.copyOf(beams);
        this.seed = seed;
        puffs = slots.takeWholes(1);
        wasOn = slots.takeWholes(1);
    }

    /** Those beams that a pump's fog can reach; none where it is not told where the pump stands. */
    static List<Beam> near(final Output pump, final List<Beam> beams) {
        return pump.at()
                .map(at -> beams.stream()
                        .filter(beam -> beam.isWithin(at, DRIFTS_M))
                        .toList())
                .orElse(List.of());
    }

    @Override
    public void step(final State state) {
        final boolean isOn = state.isOn(output);
        if (isOn
                && !state.flag(wasOn)
                && heater.map(block -> block.isHot(state)).orElse(true)) {
            puff(state);
        }
        state.setFlag(wasOn, isOn);
    }

    @Override
    public long wakesNs(final State state) {
        return ASLEEP;
    }

    private void puff(final State state) {
        final long count = state.whole(puffs);
        state.setWhole(puffs, count + 1);
        for (final Beam beam : beams) {
            final long thing = ((long) output << 16) + beam.input();
            if (Draw.unit(seed, Purpose.FOG, thing, DRAWS * count) < HITS_SHARE) {
                final double fromS = LATEST_S * Draw.unit(seed, Purpose.FOG, thing, DRAWS * count + 1);
                final double forS =
                        LEAST_S + (MOST_S - LEAST_S) * Draw.unit(seed, Purpose.FOG, thing, DRAWS * count + 2);
                beam.fog(state, Fact.nanos(fromS), Fact.nanos(forS));
            }
        }
    }
}
