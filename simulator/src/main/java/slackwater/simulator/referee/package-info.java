/**
 * Judges a run from pins and plants alone (S20). Shares no code with what it judges: it reads the rig and the
 * electrical levels with its own polarity, and knows no plan, demand, mode or debounced value.
 */
@NullMarked
package slackwater.simulator.referee;

import org.jspecify.annotations.NullMarked;
