package slackwater.model;

import java.time.Duration;
import java.util.Optional;

/**
 * An output's own limits, kept by its driver whatever a cue asks.
 *
 * @param longestOn never energised longer; empty only for an air supply, a heater, a lamp or a fan
 * @param shortestOff never energised again sooner
 * @param starts at most so many starts within a time
 */
public record Limits(Optional<Duration> longestOn, Duration shortestOff, Optional<Starts> starts) {

    /** No more than {@code most} starts in any span of {@code within}. */
    public record Starts(int most, Duration within) {}

    public static final Limits NONE = new Limits(Optional.empty(), Duration.ZERO, Optional.empty());
}
