/** The scan on a real computer: its thread and its supervisor, wall time, watchdogs, the journal's file. */
@NullMarked
package slackwater.controller.live;

import org.jspecify.annotations.NullMarked;
