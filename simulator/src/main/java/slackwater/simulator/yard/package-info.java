/** What is true in the yard: pins, plants and people, computed without asking any controller. */
@NullMarked
package slackwater.simulator.yard;

import org.jspecify.annotations.NullMarked;
