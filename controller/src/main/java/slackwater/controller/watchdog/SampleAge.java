package slackwater.controller.watchdog;

/** The port that tells the commit how old the samples are that it acts on (S9). The logic never sees it. */
public interface SampleAge {
    /** Nanoseconds since the inputs of this scan were sampled. */
    long ageNs();

    /** Scans that take no time, as on the virtual bench. */
    SampleAge NONE = () -> 0;
}
