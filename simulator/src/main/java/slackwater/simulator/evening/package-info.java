/** A whole evening: who opens the yard, who comes, what is recorded of it and what it amounts to. */
@NullMarked
package slackwater.simulator.evening;

import org.jspecify.annotations.NullMarked;
