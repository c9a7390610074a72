package slackwater.controller.cue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Step;

/** Steps between two awaits, compiled: their moments are drawn when it begins, and it ends with its last step. */
final class Passage {
    private final List<Step> steps;
    private final Action[] actions;
    private final int firstDraw;
    private final CueCode.Numbers draws;
    private final Timer whole;

    Passage(
            final List<Step> steps,
            final Places places,
            final Layout layout,
            final String place,
            final int firstDraw,
            final CueCode.Numbers draws) {
        this.steps = List.copyOf(steps);
        this.firstDraw = firstDraw;
        this.draws = draws;
        whole = layout.timer(place + ".whole");
        final List<Action> compiled = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i) instanceof Step.Energise energise) {
                final int[] outputs = places.outputsHere(energise.outputs());
                compiled.add(new Action(energise, outputs, place + "." + i, layout));
            }
        }
        actions = compiled.toArray(Action[]::new);
    }

    void begin(final RunState run, final long start) {
        long endsNs = 0;
        long latestNs = 0;
        int action = 0;
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i) instanceof Step.Energise energise) {
                final long startsNs = energise.at().map(at -> at.toNanos()).orElse(endsNs);
                endsNs = startsNs
                        + energise.lasts().toNanos()
                        + draw(energise.vary().toNanos(), start, i);
                actions[action].schedule(run, startsNs, endsNs);
                action++;
            } else if (steps.get(i) instanceof Step.Pause pause) {
                endsNs += pause.lasts().toNanos() + draw(pause.vary().toNanos(), start, i);
            }
            latestNs = Math.max(latestNs, endsNs);
        }
        whole.start(run, latestNs);
    }

    /** Returns false once every step has ended. */
    boolean goOn(final RunState run, final Asking asking) {
        if (whole.isDue(run)) {
            return false;
        }
        for (final Action action : actions) {
            action.goOn(run, asking);
        }
        return true;
    }

    void end(final RunState run) {
        whole.stop(run);
        for (final Action action : actions) {
            action.end(run);
        }
    }

    IntStream outputs() {
        return java.util.Arrays.stream(actions).flatMapToInt(action -> java.util.Arrays.stream(action.outputs()));
    }

    private long draw(final long mostNs, final long start, final int step) {
        return mostNs == 0 ? 0 : draws.upTo(mostNs, start, firstDraw + step);
    }
}
