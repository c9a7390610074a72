/** Reads a rig folder: rig.toml and shows/NAME.toml, with a finding for every mistake. */
@NullMarked
package slackwater.model.file;

import org.jspecify.annotations.NullMarked;
