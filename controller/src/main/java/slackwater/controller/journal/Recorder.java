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
        if (dropped > 0 && isTaken(new Event.Dropped(run.atNs(), dropped))) {
            dropped = 0;
        }
        for (int i = 0; i < image.events().size(); i++) {
            if (!isTaken(image.events().get(i))) {
                dropped++;
            }
        }
        image.events().clear();
    }

    /** A journal that throws has not taken it; what it records never decides what the scan does. */
    private boolean isTaken(final Event event) {
        try {
            return journal.offer(event);
        } catch (final RuntimeException broken) {
            return false;
        }
    }

    /** How many records wait to be told as dropped. */
    public long dropped() {
        return dropped;
    }
}
