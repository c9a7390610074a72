/** How long a scan takes and what it allocates, beside a loop written by hand. Run with {@code -Pbench}, never in tests. */
@NullMarked
package slackwater.simulator.benchmark;

import org.jspecify.annotations.NullMarked;
