/** What happens on a controller, as records that journal, page, link and reports share. */
@NullMarked
package slackwater.model.event;

import org.jspecify.annotations.NullMarked;
