/** What the bench promises, tried on small rigs and on the examples. */
@NullMarked
package slackwater.simulator.bench;

import org.jspecify.annotations.NullMarked;
