@NullMarked
package slackwater.simulator.junit;

import org.jspecify.annotations.NullMarked;
