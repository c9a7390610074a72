/** The kinds of input and output: open to extension by the standard service loader, each within one closed family. */
@NullMarked
package slackwater.model.kind;

import org.jspecify.annotations.NullMarked;
