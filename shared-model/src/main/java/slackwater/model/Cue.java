package slackwater.model;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What is played when somebody comes by.
 *
 * @param priority higher pre-empts lower where they share an output; equal: the order of the file (S11)
 * @param provided conditions that must be proven at the start, or the start is refused
 * @param againAfterClear not again until the starting inputs have been proven inactive for so long (S23)
 * @param holdOff not again for so long after the last start
 * @param steps what it does; empty for a cue in code
 * @param code the word of a cue in code, found by the standard service loader; empty for steps
 */
public record Cue(
        String name,
        String zone,
        int priority,
        Start start,
        List<Condition> provided,
        Optional<Duration> againAfterClear,
        Duration holdOff,
        List<Step> steps,
        Optional<String> code,
        Facts facts) {
    public Cue {
        provided = List.copyOf(provided);
        steps = List.copyOf(steps);
    }
}
