package slackwater.model;

import java.time.Duration;
import java.util.List;

/**
 * How a zone comes alive (S6).
 *
 * @param warning light and sound for so long before anything may move
 * @param warnsWith names of lamps and sounders that give the warning
 * @param airSettles after the air supply opens, cues wait so long
 */
public record Arming(Duration warning, List<String> warnsWith, Duration airSettles) {
    public static final Arming USUAL = new Arming(Duration.ofSeconds(5), List.of(), Duration.ZERO);

    public Arming {
        warnsWith = List.copyOf(warnsWith);
    }
}
