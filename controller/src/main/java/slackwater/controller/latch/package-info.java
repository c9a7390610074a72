/** Latches that stay until a person clears them, the wishes that they end, and what of them outlives a restart (S4, S5). */
@NullMarked
package slackwater.controller.latch;

import org.jspecify.annotations.NullMarked;
