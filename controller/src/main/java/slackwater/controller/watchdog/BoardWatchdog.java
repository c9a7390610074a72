package slackwater.controller.watchdog;

/** The port to the board's own watchdog device. */
public interface BoardWatchdog {
    /** Tells it that a scan was whole and in time. */
    void feed();

    /** A board without one. */
    BoardWatchdog NONE = () -> {};
}
