package slackwater.controller.journal;

import slackwater.model.event.Event;

/** The port to where records go. Called by the scan, so it takes at once or refuses at once. */
public interface Journal {
    /** Takes a record; false when there is no room. */
    boolean offer(Event event);

    /** Nobody keeps records. */
    Journal NONE = event -> true;
}
