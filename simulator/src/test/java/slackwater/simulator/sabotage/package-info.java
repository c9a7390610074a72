/** Sabotaged controllers, and a referee who must see it. */
@NullMarked
package slackwater.simulator.sabotage;

import org.jspecify.annotations.NullMarked;
