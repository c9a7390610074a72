/** When a schedule opens and closes, by the local clock and the sun. */
@NullMarked
package slackwater.model.calendar;

import org.jspecify.annotations.NullMarked;
