/** The port to the pins, the one-way gate before it, and bare virtual pins. */
@NullMarked
package slackwater.controller.pins;

import org.jspecify.annotations.NullMarked;
