/** Who walks past, where everyone is at any moment, and what a sensor can make of it. */
@NullMarked
package slackwater.simulator.visitor;

import org.jspecify.annotations.NullMarked;
