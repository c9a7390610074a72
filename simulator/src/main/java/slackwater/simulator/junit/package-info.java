/** For people who test a rig, a kind or a cue in code of their own with JUnit 5; the program itself does without. */
@NullMarked
package slackwater.simulator.junit;

import org.jspecify.annotations.NullMarked;
