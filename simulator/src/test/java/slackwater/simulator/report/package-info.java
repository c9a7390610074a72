@NullMarked
package slackwater.simulator.report;

import org.jspecify.annotations.NullMarked;
