/** The demo in two acts: a plausible first sketch of a yard, and the corrected rig, with the same visitors and the same mishap. */
@NullMarked
package slackwater.simulator.demo;

import org.jspecify.annotations.NullMarked;
