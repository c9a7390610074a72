package slackwater.controller.guard;

import slackwater.controller.run.RunState;

/** What the guards must know of an output's driver, so that a candidate whose own driver refuses blocks nobody (S12). */
public interface DriverLimits {
    boolean mayEnergise(RunState run, int output, boolean isEnergised);

    /** What the driver's limits say now, in words. */
    String observed(RunState run, int output);

    long sinceNs(RunState run, int output);

    String clearsWhen(RunState run, int output);
}
