package slackwater.controller.guard;

import slackwater.controller.image.Image;
import slackwater.controller.run.RunState;
import slackwater.model.event.Refusal;

/** A reason not to energise. Pure: it can only refuse, and changes nothing by looking. */
interface Guard {
    /** Whether the output may be energised, or stay so. */
    boolean permits(RunState run, Image image, int output);

    /** The refusal in words; asked for only when it refuses. */
    Refusal refusal(RunState run, Image image, int output);

    /** Notices what time and inputs have brought; once a scan, before the judging. */
    default void update(final RunState run, final Image image) {}

    /** Told of what the pins really did, so that history counts transitions and not wishes (S12). */
    default void observe(final RunState run, final int output, final boolean isEnergised) {}
}
