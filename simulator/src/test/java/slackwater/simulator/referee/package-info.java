/** Hand-made waveforms for the referee, at and just past each limit. */
@NullMarked
package slackwater.simulator.referee;

import org.jspecify.annotations.NullMarked;
