package slackwater.controller.watchdog;

/** The steps of a scan, in the only order in which they may run. */
public enum Step {
    INPUTS,
    COMMANDS,
    MODES,
    CUES,
    GUARDS,
    DRIVERS,
    PINS
}
