/** One pass over the rig; the order of its steps is the safety argument. */
@NullMarked
package slackwater.controller.scan;

import org.jspecify.annotations.NullMarked;
