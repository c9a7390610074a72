/** The demo in two acts, reckoned again. */
@NullMarked
package slackwater.simulator.demo;

import org.jspecify.annotations.NullMarked;
