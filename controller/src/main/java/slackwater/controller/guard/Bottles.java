package slackwater.controller.guard;

import slackwater.controller.run.RunState;

/** What the guards must know of the ledger: whether enough is left for another start, or for going on. */
public interface Bottles {
    /** Whether the output is counted down at all. */
    boolean hasBottle(int output);

    boolean hasEnough(RunState run, int output, boolean isEnergised);

    /** What is left, in words. */
    String observed(RunState run, int output);

    long sinceNs(RunState run, int output);

    String clearsWhen(int output);
}
