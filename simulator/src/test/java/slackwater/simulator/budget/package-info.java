/** A budget's figures, held against worked examples reckoned by hand from the handbook's formulas. */
@NullMarked
package slackwater.simulator.budget;

import org.jspecify.annotations.NullMarked;
