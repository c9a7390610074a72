package slackwater.simulator.yard;

import slackwater.model.Input;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.simulator.visitor.Sight;

/** A light beam: active while a body or fog is in it. */
final class Beam implements Plant {
    private static final int PIECES = 32;

    private final int input;
    private final Input of;
    private final int fogFromNs;
    private final int fogUntilNs;

    Beam(final int input, final Input of, final Slots slots) {
        this.input = input;
        this.of = of;
        fogFromNs = slots.takeWholes(1);
        fogUntilNs = slots.takeWholes(1);
    }

    int input() {
        return input;
    }

    /** Whether any of it passes so near; judged at points along it, which is as exact as fog is. */
    boolean isWithin(final Point at, final double radiusM) {
        if (of.sees().ray().isEmpty()) {
            return false;
        }
        final Ray ray = of.sees().ray().get();
        for (int i = 0; i <= PIECES; i++) {
            final double share = (double) i / PIECES;
            final double xM =
                    ray.from().xM() + share * (ray.to().xM() - ray.from().xM());
            final double yM =
                    ray.from().yM() + share * (ray.to().yM() - ray.from().yM());
            if (Sight.isWithin(at, radiusM, xM, yM)) {
                return true;
            }
        }
        return false;
    }

    /** Fog drifts in after a while and stays for a while; what is there already stays at least as long. */
    void fog(final State state, final long afterNs, final long forNs) {
        final long fromNs = state.nowNs() + afterNs;
        final boolean isFoggy = state.nowNs() < state.whole(fogUntilNs);
        state.setWhole(fogFromNs, isFoggy ? Math.min(state.whole(fogFromNs), fromNs) : fromNs);
        state.setWhole(fogUntilNs, Math.max(state.whole(fogUntilNs), fromNs + forNs));
    }

    @Override
    public void step(final State state) {
        final boolean isInFog = state.whole(fogFromNs) <= state.nowNs() && state.nowNs() < state.whole(fogUntilNs);
        state.setActive(input, isInFog || state.isSomebodySeen(input));
    }

    @Override
    public long wakesNs(final State state) {
        if (state.nowNs() < state.whole(fogFromNs)) {
            return state.whole(fogFromNs);
        }
        return state.nowNs() < state.whole(fogUntilNs) ? state.whole(fogUntilNs) : ASLEEP;
    }
}
