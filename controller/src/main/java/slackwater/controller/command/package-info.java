/** What people ask for: rest-ward latches that nothing can hold up, and a bounded queue of requests (S3). */
@NullMarked
package slackwater.controller.command;

import org.jspecify.annotations.NullMarked;
