/** What the steps of one scan pass to each other. */
@NullMarked
package slackwater.controller.image;

import org.jspecify.annotations.NullMarked;
