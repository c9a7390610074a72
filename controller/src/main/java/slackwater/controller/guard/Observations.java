package slackwater.controller.guard;

import slackwater.controller.run.RunState;

/** What is known of an input, for the words of a refusal. */
public interface Observations {
    String observed(RunState run, int input);

    long sinceNs(RunState run, int input);
}
