/** What is wrong with a rig or show file, as values with a position, a reason and a remedy. */
@NullMarked
package slackwater.model.finding;

import org.jspecify.annotations.NullMarked;
