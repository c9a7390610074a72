/** Facts about the computers a controller may be: header, pulls at reset, pins with a life of their own. */
@NullMarked
package slackwater.model.board;

import org.jspecify.annotations.NullMarked;
