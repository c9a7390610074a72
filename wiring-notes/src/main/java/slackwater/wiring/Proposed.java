package slackwater.wiring;

/**
 * A pin proposed for something that has none.
 *
 * @param controller the controller it is wired to
 * @param table the table of the rig file, such as {@code output.lid}
 * @param gpio the proposed GPIO
 * @param key how the rig file says it
 */
public record Proposed(String controller, String table, int gpio, Key key) {

    /** Where in its table the pin is written. */
    public enum Key {
        /** A line of its own: {@code pin = 17}. */
        PIN,
        /** One entry for each controller: {@code pins = { porch = 17 }}. */
        PINS,
        /** Inside the controller's {@code hold-up = { ... }}. */
        HOLD_UP_PIN
    }

    /** A pin that has a line of its own. */
    public static Proposed pin(final String controller, final String table, final int gpio) {
        return new Proposed(controller, table, gpio, Key.PIN);
    }

    /** What to write, as the rig file says it. */
    public String asWritten() {
        return switch (key) {
            case PIN -> "pin = " + gpio;
            case PINS -> "pins = { " + controller + " = " + gpio + " }";
            case HOLD_UP_PIN -> "hold-up = { pin = " + gpio + " }";
        };
    }
}
