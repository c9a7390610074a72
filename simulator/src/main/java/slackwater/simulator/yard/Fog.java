package slackwater.simulator.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.simulator.yard.Draw.Purpose;

/**
 * All fog that is about: it drifts with wind and fans, makes light beams read blocked (S23), and now and then sets off a motion
 * sensor that it passes closely. Looked at on a grid of its own while there is any. A beam is blocked by an optical
 * depth; the model is that of light along a line through round clouds, its figures are guesses.
 */
final class Fog implements Plant {
    static final long LOOK_NS = 100_000_000L;

    /** Six tenths of the light are left: enough to lose a cheap beam that was set up with little to spare (a guess). */
    static final double BLOCKS_AT_DEPTH = 0.5;

    /** So near warm fog can be felt by an infrared sensor, if it is warm enough (a guess). */
    private static final double FELT_WITHIN_M = 0.5;

    private static final double FELT_SHARE = 0.05;

    private final List<Puffs> puffs = new ArrayList<>();
    private final List<Lit> beams = new ArrayList<>();
    private final List<Eye> eyes = new ArrayList<>();
    private final Wind wind;
    private final long seed;

    private record Lit(Beam beam, Line line) {}

    private record Eye(MotionSensor sensor, Line at) {}

    /** For the beams; motion sensors are made after the fog and tell of themselves. */
    Fog(final List<Puffs> puffs, final List<Beam> beams, final Wind wind, final long seed) {
        this.puffs.addAll(puffs);
        for (final Beam beam : beams) {
            beam.line().ifPresent(line -> this.beams.add(new Lit(beam, line)));
        }
        this.wind = wind;
        this.seed = seed;
    }

    void feltBy(final MotionSensor sensor, final Optional<Line> at) {
        at.ifPresent(point -> eyes.add(new Eye(sensor, point)));
    }

    @Override
    public void step(final State state) {
        if (state.nowNs() % LOOK_NS != 0) {
            return;
        }
        boolean isAny = false;
        for (int i = 0; i < puffs.size(); i++) {
            if (puffs.get(i).isBusy(state)) {
                puffs.get(i).step(state, wind, LOOK_NS / State.NS_PER_S);
                isAny = true;
            }
        }
        if (isAny) {
            look(state);
        }
    }

    @Override
    public long wakesNs(final State state) {
        for (int i = 0; i < puffs.size(); i++) {
            if (puffs.get(i).isBusy(state)) {
                return (state.nowNs() / LOOK_NS + 1) * LOOK_NS;
            }
        }
        return ASLEEP;
    }

    private void look(final State state) {
        for (int i = 0; i < beams.size(); i++) {
            final Lit lit = beams.get(i);
            double depth = 0;
            for (int source = 0; source < puffs.size(); source++) {
                depth += puffs.get(source).depth(state, lit.line());
            }
            lit.beam().setInFog(state, depth >= BLOCKS_AT_DEPTH);
        }
        for (int i = 0; i < eyes.size(); i++) {
            final Eye eye = eyes.get(i);
            boolean isFelt = false;
            for (int source = 0; source < puffs.size(); source++) {
                final long puff = puffs.get(source).near(state, eye.at(), FELT_WITHIN_M);
                final long thing = ((long) source << 16) + eye.sensor().input();
                isFelt |= puff > 0 && Draw.unit(seed, Purpose.FOG, thing, puff) < FELT_SHARE;
            }
            eye.sensor().setFogFelt(state, isFelt);
        }
    }
}
