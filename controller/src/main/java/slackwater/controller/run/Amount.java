package slackwater.controller.run;

/** A number in the run: a {@link Count} where it decides the future, a {@link Tally} where it does not. */
public sealed interface Amount permits Count, Tally {
    long of(RunState run);

    void set(RunState run, long value);
}
