package slackwater.controller.run;

/** IEC 61131-3's pulse: a rise makes it true for exactly the time; further rises meanwhile are ignored. */
public final class Pulse {
    private final Flag wasTrue;
    private final Timer timer;
    private final long lengthNs;

    public Pulse(final Layout layout, final String name, final long lengthNs) {
        wasTrue = layout.flag(name + ".was-true");
        timer = layout.timer(name);
        this.lengthNs = lengthNs;
    }

    public boolean update(final RunState run, final boolean input) {
        if (input && !wasTrue.is(run) && !timer.isRunning(run)) {
            timer.start(run, lengthNs);
        }
        wasTrue.set(run, input);
        return timer.isRunning(run);
    }
}
