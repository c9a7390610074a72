package slackwater.model.kind;

import java.time.Duration;

/** What an input is to the safety rules, with the proving times used where the rig file names none (common practice, no source). */
public enum InputFamily {
    /** Passive infrared sensor; active while it sees somebody. */
    MOTION(0, 500),
    /** Light beam or curtain; active while it is blocked. */
    BEAM(0, 200),
    /** Pressure switch; active while the pressure is above its set point. */
    PRESSURE(100, 100),
    /** Level switch; active while there is enough liquid. */
    LEVEL(500, 500),
    /** Ready signal of a machine; active while it is ready. */
    READY(100, 100),
    /** Push button; active while pressed. */
    BUTTON(30, 30),
    /** Key switch; active while turned on. */
    KEY(50, 50),
    /** Rain sensor; active while wet. */
    RAIN(2_000, 60_000),
    /** Contact that follows the hard-wired stop loop; active while the loop is closed, that is while nobody has pressed stop. */
    STOP_LOOP(200, 0);

    private final Duration activeAfter;
    private final Duration inactiveAfter;

    InputFamily(final long activeAfterMs, final long inactiveAfterMs) {
        this.activeAfter = Duration.ofMillis(activeAfterMs);
        this.inactiveAfter = Duration.ofMillis(inactiveAfterMs);
    }

    /** Unbroken time after which the input counts as proven active, unless the rig says otherwise. */
    public Duration activeAfter() {
        return activeAfter;
    }

    /** Unbroken time after which the input counts as proven inactive, unless the rig says otherwise. */
    public Duration inactiveAfter() {
        return inactiveAfter;
    }
}
