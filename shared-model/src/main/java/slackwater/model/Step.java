package slackwater.model;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** One line of a cue. */
public sealed interface Step {

    /**
     * Wishes that outputs be energised.
     *
     * @param at from the cue's start or the end of its last await or one-of; empty: when the step before has ended
     * @param lasts how long
     * @param vary up to so much longer, drawn for each start
     * @param blink whole period of blinking, half of it on; empty: steady
     */
    record Energise(
            List<String> outputs, Optional<Duration> at, Duration lasts, Duration vary, Optional<Duration> blink)
            implements Step {
        public Energise {
            outputs = List.copyOf(outputs);
        }
    }

    /** Waits. */
    record Pause(Duration lasts, Duration vary) implements Step {}

    /**
     * Waits for a condition to be proven.
     *
     * @param atMost at most so long
     * @param goesOn whether the cue goes on when the time is over; otherwise it ends
     */
    record Await(Condition condition, Duration atMost, boolean goesOn) implements Step {}

    /** One of several, drawn for each start. No await or one-of inside. */
    record OneOf(List<List<Step>> choices) implements Step {
        public OneOf {
            choices = choices.stream().map(List::copyOf).toList();
        }
    }
}
