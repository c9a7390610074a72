/** Refusals: interlocks, shared limits and the mode table, judged against what is (S11 to S15). */
@NullMarked
package slackwater.controller.guard;

import org.jspecify.annotations.NullMarked;
