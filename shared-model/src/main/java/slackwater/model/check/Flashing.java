package slackwater.model.check;

/** Why a rate is too high, in the words of those who set the limits. */
final class Flashing {
    static final String OVER_WCAG =
            "WCAG 2.3.1 allows 3 general flashes in any second; a yard at night is all screen, so only"
                    + " the rate decides (handbook 4.1)";
    static final String OVER_VENUE =
            "venues are held to 4 flashes a second (handbook 4.2, UK Health and Safety Executive), WCAG 2.3.1 to 3";

    private Flashing() {}
}
