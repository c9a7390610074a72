package slackwater.controller.pins;

import slackwater.controller.image.Image;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;

/**
 * Commits a scan's outcome to the pins: rests first, then what starts; rest levels are rewritten every scan, and what can be
 * read back is compared (S9, S10).
 */
public final class PinWriter {
    /** A line and its load may take so long to follow (relay operate and release times, handbook 3.4; common practice). */
    private static final long SETTLES_NS = 50_000_000L;

    private final Timer[] settles;

    public PinWriter(final int outputCount, final Layout layout) {
        settles = new Timer[outputCount];
        for (int output = 0; output < outputCount; output++) {
            settles[output] = layout.timer("pin." + output + ".settles");
        }
    }

    /** Told of every output that really changed. */
    public interface Changes {
        void changed(int output, boolean isEnergised);
    }

    /** What the read-back says. */
    public enum Belief {
        /** Nothing contradicts what was written. */
        FINE,
        STUCK_ON,
        STUCK_OFF
    }

    /** Writes rests, then starts. */
    public void commit(final RunState run, final Image image, final Gate gate, final Changes changes) {
        for (int output = 0; output < settles.length; output++) {
            if (!image.next[output]) {
                gate.rest(output);
                note(run, image, output, false, changes);
            }
        }
        for (int output = 0; output < settles.length; output++) {
            if (image.next[output]) {
                if (!image.energised[output]) {
                    gate.energise(output);
                }
                note(run, image, output, true, changes);
            }
        }
    }

    /** What is known of one output, once it has had time to settle. */
    public Belief belief(final RunState run, final Image image, final Gate gate, final int output) {
        final Pins.ReadBack known = gate.lines().readBack(output);
        if (known == Pins.ReadBack.UNKNOWN || settles[output].isRunning(run)) {
            return Belief.FINE;
        }
        final boolean isOn = known == Pins.ReadBack.ENERGISED;
        if (isOn == image.energised[output]) {
            return Belief.FINE;
        }
        return isOn ? Belief.STUCK_ON : Belief.STUCK_OFF;
    }

    private void note(
            final RunState run, final Image image, final int output, final boolean isOn, final Changes changes) {
        if (image.energised[output] != isOn) {
            image.energised[output] = isOn;
            settles[output].start(run, SETTLES_NS);
            changes.changed(output, isOn);
        }
    }
}
