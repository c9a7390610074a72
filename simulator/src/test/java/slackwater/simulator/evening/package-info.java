/** Whole evenings of the examples. */
@NullMarked
package slackwater.simulator.evening;

import org.jspecify.annotations.NullMarked;
