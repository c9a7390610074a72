/** What a person, a viewer or a script reads of a run: summary, waveform file, page. */
@NullMarked
package slackwater.simulator.report;

import org.jspecify.annotations.NullMarked;
