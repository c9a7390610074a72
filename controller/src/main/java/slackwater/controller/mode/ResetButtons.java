package slackwater.controller.mode;

import java.util.Arrays;
import slackwater.controller.image.Image;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;

/** Reset acts on the release edge of a button that was seen open since boot, so that a stuck button resets nothing (S4). */
final class ResetButtons {
    private final int[] inputs;
    private final Flag[] wasSeenOpen;
    private final Flag[] isPressed;

    ResetButtons(final int[] inputs, final Layout layout) {
        this.inputs = inputs;
        wasSeenOpen = Arrays.stream(inputs)
                .mapToObj(input -> layout.flag("reset." + input + ".seen-open"))
                .toArray(Flag[]::new);
        isPressed = Arrays.stream(inputs)
                .mapToObj(input -> layout.flag("reset." + input + ".pressed"))
                .toArray(Flag[]::new);
    }

    /** Whether any button was released in this scan after having been open, then pressed. */
    boolean areReleased(final RunState run, final Image image) {
        boolean isReleased = false;
        for (int i = 0; i < inputs.length; i++) {
            final int input = inputs[i];
            if (image.provenInactive[input]) {
                isReleased |= isPressed[i].is(run);
                isPressed[i].set(run, false);
                wasSeenOpen[i].set(run, true);
            } else if (image.provenActive[input] && wasSeenOpen[i].is(run)) {
                isPressed[i].set(run, true);
            }
        }
        return isReleased;
    }
}
