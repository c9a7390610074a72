/** Each output's own limits, after all guards. */
@NullMarked
package slackwater.controller.driver;

import org.jspecify.annotations.NullMarked;
