package slackwater.controller.image;

/** Input views that must all be proven. */
public final class Conditions {
    private final int[] input;
    private final boolean[] isActive;

    Conditions(final int[] input, final boolean[] isActive) {
        this.input = input;
        this.isActive = isActive;
    }

    /** Whether every one is proven; true when there are none. */
    public boolean areProven(final Image image) {
        return firstUnproven(image) < 0;
    }

    /** Whether the opposite of at least one is proven; an input that is neither proves nothing (S7). */
    public boolean isAnyDisproven(final Image image) {
        for (int i = 0; i < input.length; i++) {
            final boolean[] opposite = isActive[i] ? image.provenInactive : image.provenActive;
            if (opposite[input[i]]) {
                return true;
            }
        }
        return false;
    }

    /** The position of the first condition that is not proven, or -1. */
    public int firstUnproven(final Image image) {
        for (int i = 0; i < input.length; i++) {
            final boolean[] view = isActive[i] ? image.provenActive : image.provenInactive;
            if (!view[input[i]]) {
                return i;
            }
        }
        return -1;
    }

    public int size() {
        return input.length;
    }

    /** The input of a condition, as a position in the image. */
    public int input(final int condition) {
        return input[condition];
    }

    public boolean wantsActive(final int condition) {
        return isActive[condition];
    }
}
