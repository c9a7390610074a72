package slackwater.controller.cue;

import slackwater.controller.run.RunState;

/** Forms a demand before the guards judge it: a pattern, an after-run. Immutable: all it remembers is in the run. */
public interface Shape {
    /**
     * Whether the output is asked for in this scan.
     *
     * @param isDemanded whether a cue or the rig demands it
     * @param mayAfterRun whether the mode lets anything go on beyond the demand
     */
    boolean asks(RunState run, boolean isDemanded, boolean mayAfterRun);
}
