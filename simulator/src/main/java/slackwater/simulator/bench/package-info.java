/** The virtual bench: the controllers' very scans on virtual pins, in virtual time, in a yard that is computed. */
@NullMarked
package slackwater.simulator.bench;

import org.jspecify.annotations.NullMarked;
