package slackwater.controller.cue;

import slackwater.controller.run.RunState;

/** What a cue does once it has started. Immutable: all it remembers is in the run. */
public interface Playing {
    /**
     * Begins from the first step.
     *
     * @param start which start of this cue it is, counted from 1, for draws
     */
    void begin(RunState run, long start);

    /** Goes on, wishing what its steps wish. Returns false once it has ended. */
    boolean goOn(RunState run, Asking asking);

    /** Ends it whole, at whatever step. */
    void end(RunState run);

    /** Positions of the outputs that it may ever wish. */
    int[] outputs();
}
