package slackwater.model;

import java.util.List;
import java.util.Optional;

/** What is played on a rig. */
public record Show(String name, List<Cue> cues, Optional<Schedule> schedule) {
    public Show {
        cues = List.copyOf(cues);
    }
}
