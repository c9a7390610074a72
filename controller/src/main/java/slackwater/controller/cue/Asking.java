package slackwater.controller.cue;

import slackwater.controller.image.Image;

/** All that a cue may do: wish. */
public final class Asking {
    private final Image image;

    Asking(final Image image) {
        this.image = image;
    }

    /**
     * Wishes that an output be energised in this scan.
     *
     * @param isNew whether a step begins with this wish, which renews a demand that a refusal has used up (S11)
     */
    public void energise(final int output, final boolean isNew) {
        image.demand[output] = true;
        image.renewed[output] |= isNew;
    }

    /** Whether an input is proven active. */
    public boolean isProvenActive(final int input) {
        return image.provenActive[input];
    }

    /** Whether an input is proven inactive. */
    public boolean isProvenInactive(final int input) {
        return image.provenInactive[input];
    }
}
