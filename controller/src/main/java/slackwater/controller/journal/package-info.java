/** What happened, handed over by queues that never block the scan, and what must outlive a restart. */
@NullMarked
package slackwater.controller.journal;

import org.jspecify.annotations.NullMarked;
