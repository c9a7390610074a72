/** What a person installs on the board: the service, the script that rests every line without Java, the rules. */
@NullMarked
package slackwater.controller.install;

import org.jspecify.annotations.NullMarked;
