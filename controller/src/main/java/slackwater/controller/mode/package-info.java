/** Latches, wishes and the mode computed from them (S4, S5, S6). */
@NullMarked
package slackwater.controller.mode;

import org.jspecify.annotations.NullMarked;
