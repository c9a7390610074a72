/** Rules that know the trade: each looks at a rig and a show and says what is wrong with them, as findings. */
@NullMarked
package slackwater.model.check;

import org.jspecify.annotations.NullMarked;
