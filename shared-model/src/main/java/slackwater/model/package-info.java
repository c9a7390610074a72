/** What a rig and a show are: immutable records, complete and consistent once the checks have passed. */
@NullMarked
package slackwater.model;

import org.jspecify.annotations.NullMarked;
