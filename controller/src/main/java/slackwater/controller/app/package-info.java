/** The controller's own program: what a person types on the board. */
@NullMarked
package slackwater.controller.app;

import org.jspecify.annotations.NullMarked;
