/** The run's own cells and deadline timers: all that the logic remembers, and the only way in which it sees time. */
@NullMarked
package slackwater.controller.run;

import org.jspecify.annotations.NullMarked;
