/** Wishes: what is played when somebody comes by. */
@NullMarked
package slackwater.controller.cue;

import org.jspecify.annotations.NullMarked;
