/** What must outlive a restart, on disk: synchronised before it counts, whole or not there at all (S5). */
@NullMarked
package slackwater.controller.disk;

import org.jspecify.annotations.NullMarked;
