package slackwater.controller.run;

/** IEC 61131-3's on-delay: true once its input has been true for the whole time. */
public final class OnDelay {
    private final Timer timer;
    private final long delayNs;

    public OnDelay(final Layout layout, final String name, final long delayNs) {
        timer = layout.timer(name);
        this.delayNs = delayNs;
    }

    public boolean update(final RunState run, final boolean input) {
        if (!input) {
            timer.stop(run);
        } else if (!timer.isStarted(run)) {
            timer.start(run, delayNs);
        }
        return timer.isDue(run);
    }
}
