package slackwater.simulator.referee;

/**
 * What persons, or the calendar, did that no pin shows. Stop, reset and the arm key are seen from their input levels.
 */
public sealed interface Act {

    /** Somebody locks an output or a zone. Several names may lock the same target. */
    record Lockout(String target, String who) implements Act {}

    /** Somebody takes their own lock away; the target stays locked while another name is on it. */
    record Unlock(String target, String who) implements Act {}

    /** Somebody arms a zone from the page instead of with its key. */
    record Arm(String zone, String who) implements Act {}

    /** The window of the schedule opens, which arms every zone (S5). */
    record ScheduleOpens() implements Act {}

    /** The window of the schedule closes, which stands every zone down (S5). */
    record ScheduleCloses() implements Act {}

    /** Somebody stands a zone down from the page; a stand-down button and the arm key are seen from their levels. */
    record StandDown(String zone, String who) implements Act {}

    /** Somebody confirms that a release has been hung again, where no input tells. */
    record Hung(String output, String who) implements Act {}
}
