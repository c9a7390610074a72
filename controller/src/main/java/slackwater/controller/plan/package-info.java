/** The rig compiled into immutable logic, once. */
@NullMarked
package slackwater.controller.plan;

import org.jspecify.annotations.NullMarked;
