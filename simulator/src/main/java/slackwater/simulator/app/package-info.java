/** The whole program: every command by name. */
@NullMarked
package slackwater.simulator.app;

import org.jspecify.annotations.NullMarked;
