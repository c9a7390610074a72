package slackwater.simulator.junit;

import slackwater.controller.cue.Asking;
import slackwater.controller.cue.CueCode;
import slackwater.controller.cue.Playing;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Cue;

/** Cues in code as somebody outside the project could write them: they light everything for some seconds. */
abstract class SampleCode implements CueCode {
    private static final long NS_PER_S = 1_000_000_000L;

    @Override
    public String word() {
        return "sample-cue";
    }

    /** Remembers how long in the run's own timer. */
    public static final class Sound extends SampleCode {
        @Override
        public Playing compile(final Cue cue, final Places places, final Layout layout, final Numbers draws) {
            return new Plain(layout.timer("sample"), places.outputs().size(), draws);
        }
    }

    /** Lights longer with every start, by a count that it keeps to itself. */
    public static final class HiddenCount extends SampleCode {
        @Override
        public Playing compile(final Cue cue, final Places places, final Layout layout, final Numbers draws) {
            return new Longer(layout.timer("sample"), places.outputs().size());
        }
    }

    private record Plain(Timer timer, int count, CueCode.Numbers draws) implements Playing {
        @Override
        public void begin(final RunState run, final long start) {
            timer.start(run, NS_PER_S + draws.upTo(NS_PER_S, start, 0));
        }

        @Override
        public boolean goOn(final RunState run, final Asking asking) {
            return playAll(timer, count, run, asking);
        }

        @Override
        public void end(final RunState run) {
            timer.stop(run);
        }

        @Override
        public int[] outputs() {
            return all(count);
        }
    }

    private static final class Longer implements Playing {
        private final Timer timer;
        private final int count;
        private int hiddenStarts;

        Longer(final Timer timer, final int count) {
            this.timer = timer;
            this.count = count;
        }

        @Override
        public void begin(final RunState run, final long start) {
            hiddenStarts++;
            timer.start(run, NS_PER_S * hiddenStarts / 4);
        }

        @Override
        public boolean goOn(final RunState run, final Asking asking) {
            return playAll(timer, count, run, asking);
        }

        @Override
        public void end(final RunState run) {
            timer.stop(run);
        }

        @Override
        public int[] outputs() {
            return all(count);
        }
    }

    private static boolean playAll(final Timer timer, final int count, final RunState run, final Asking asking) {
        if (timer.isDue(run)) {
            timer.stop(run);
            return false;
        }
        for (int output = 0; output < count; output++) {
            asking.energise(output, false);
        }
        return true;
    }

    private static int[] all(final int count) {
        final int[] all = new int[count];
        for (int i = 0; i < count; i++) {
            all[i] = i;
        }
        return all;
    }
}
