/** Proof that a scan was whole and in time, and what is fed on it (S2, S8). */
@NullMarked
package slackwater.controller.watchdog;

import org.jspecify.annotations.NullMarked;
