/** The same rig as paper: the sheet a person takes to the bench, and pins proposed for what has none yet. */
@NullMarked
package slackwater.wiring;

import org.jspecify.annotations.NullMarked;
