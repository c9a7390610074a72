/** The real lines: which board this is, every line claimed at rest, and the one place that knows the GPIO library. */
@NullMarked
package slackwater.controller.gpio;

import org.jspecify.annotations.NullMarked;
