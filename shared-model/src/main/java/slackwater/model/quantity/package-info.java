/** Numbers with units: strict text in, SI inside. */
@NullMarked
package slackwater.model.quantity;

import org.jspecify.annotations.NullMarked;
