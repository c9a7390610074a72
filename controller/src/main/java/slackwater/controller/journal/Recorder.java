package slackwater.controller.journal;

import slackwater.controller.image.Image;
import slackwater.controller.run.RunState;
import slackwater.model.event.Event;

/** Hands a scan's notes to the journal; what finds no room is counted, and the count is told as soon as there is (S22). */
public final class Recorder {
    private final Journal journal;
    private long dropped;

    public Recorder(final Journal journal) {
        this.journal = journal;
    }

    public void record(final RunState run, final Image image) {
        dropped += image.takeEventsLost();
        if (image.events().isEmpty() && dropped == 0) {
            return;
        }
        if (dropped > 0 && journal.offer(new Event.Dropped(run.atNs(), dropped))) {
            dropped = 0;
        }
        for (int i = 0; i < image.events().size(); i++) {
            if (!journal.offer(image.events().get(i))) {
                dropped++;
            }
        }
        image.events().clear();
    }

    /** How many records wait to be told as dropped. */
    public long dropped() {
        return dropped;
    }
}
