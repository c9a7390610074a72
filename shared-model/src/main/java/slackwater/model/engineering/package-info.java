/** Formulas of the trade, each with its published source: pure functions of numbers, no rig and no file. */
@NullMarked
package slackwater.model.engineering;

import org.jspecify.annotations.NullMarked;
