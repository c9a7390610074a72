/** What is used up: counted from what the pins did, warned of ahead of empty, refused before it runs dry. */
@NullMarked
package slackwater.controller.ledger;

import org.jspecify.annotations.NullMarked;
