/** What a rig asks of its air, heat, water, current and sensors, against what it has: line by line, before money is spent. */
@NullMarked
package slackwater.simulator.budget;

import org.jspecify.annotations.NullMarked;
