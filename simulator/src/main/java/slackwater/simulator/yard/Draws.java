package slackwater.simulator.yard;

import java.util.List;
import java.util.function.Predicate;
import slackwater.model.Load;

/** What every load draws now: its inrush for its time from its start, then its steady current. */
final class Draws {
    private final List<Load> loads;
    private final List<Predicate<State>> isDrawing;
    private final int startedNs;
    private final int wasDrawing;

    /**
     * All loads in the order of {@link Sources}.
     *
     * @param isDrawing whether a load draws anything; having power is not enough where a thermostat or a switch of its own decides
     */
    Draws(final List<Load> loads, final List<Predicate<State>> isDrawing, final Slots slots) {
        this.loads = List.copyOf(loads);
        this.isDrawing = List.copyOf(isDrawing);
        startedNs = slots.takeWholes(loads.size());
        wasDrawing = slots.takeWholes(loads.size());
    }

    /** Sees which loads have started. */
    void look(final State state) {
        for (int i = 0; i < loads.size(); i++) {
            final boolean isDrawingNow = isDrawing.get(i).test(state);
            if (isDrawingNow != state.flag(wasDrawing + i)) {
                state.setFlag(wasDrawing + i, isDrawingNow);
                state.setWhole(startedNs + i, state.nowNs());
            }
        }
    }

    /** Amperes, at the load's own voltage. */
    double amps(final State state, final int load) {
        if (!state.flag(wasDrawing + load)) {
            return 0;
        }
        return state.nowNs() < inrushEndsNs(state, load)
                ? loads.get(load).inrushAmps()
                : loads.get(load).amps();
    }

    /** The next moment at which an inrush is over. */
    long wakesNs(final State state) {
        long wakesNs = Plant.ASLEEP;
        for (int i = 0; i < loads.size(); i++) {
            if (state.flag(wasDrawing + i) && state.nowNs() < inrushEndsNs(state, i)) {
                wakesNs = Math.min(wakesNs, inrushEndsNs(state, i));
            }
        }
        return wakesNs;
    }

    private long inrushEndsNs(final State state, final int load) {
        return state.whole(startedNs + load) + loads.get(load).inrushLasts().toNanos();
    }
}
