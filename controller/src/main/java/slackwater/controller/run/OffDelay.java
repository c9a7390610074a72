package slackwater.controller.run;

/** IEC 61131-3's off-delay: true with its input and for the whole time after it has fallen. */
public final class OffDelay {
    private final Flag wasTrue;
    private final Timer timer;
    private final long delayNs;

    public OffDelay(final Layout layout, final String name, final long delayNs) {
        wasTrue = layout.flag(name + ".was-true");
        timer = layout.timer(name);
        this.delayNs = delayNs;
    }

    public boolean update(final RunState run, final boolean input) {
        if (input) {
            timer.stop(run);
        } else if (wasTrue.is(run)) {
            timer.start(run, delayNs);
        }
        wasTrue.set(run, input);
        return input || timer.isRunning(run);
    }

    /** Forgets the time after: at rest at once. */
    public void clear(final RunState run) {
        wasTrue.set(run, false);
        timer.stop(run);
    }
}
