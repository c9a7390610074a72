/** From sampled levels to views that have earned belief (S7, S23). */
@NullMarked
package slackwater.controller.input;

import org.jspecify.annotations.NullMarked;
