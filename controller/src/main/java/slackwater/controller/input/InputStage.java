package slackwater.controller.input;

import java.util.List;
import slackwater.controller.image.Image;
import slackwater.controller.pins.Pins;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.model.Input;
import slackwater.model.event.Event;

/**
 * Turns sampled levels into two proven views of each input (S7): each falls at the first sample that disagrees and rises only
 * after its unbroken time. An input that is warming up (S23) or stuck is neither.
 */
public final class InputStage {
    private final One[] inputs;

    public InputStage(final List<Input> inputs, final Layout layout) {
        this.inputs = inputs.stream().map(input -> new One(input, layout)).toArray(One[]::new);
    }

    /** Samples the lines and brings every view up to date. */
    public void update(final RunState run, final Pins pins, final Image image) {
        pins.sample();
        for (int i = 0; i < inputs.length; i++) {
            inputs[i].update(run, pins, i, image);
        }
    }

    /** Since when the input has had the level that it has now. */
    public long sinceNs(final RunState run, final int input) {
        return inputs[input].changed.atNs(run);
    }

    /** What is known of an input, in words for a refusal. */
    public String observed(final RunState run, final int input) {
        return inputs[input].observed(run);
    }

    private static final class One {
        private final String name;
        private final boolean isActiveHigh;
        private final long activeAfterNs;
        private final long inactiveAfterNs;
        private final long warmUpNs;
        private final long stuckAfterNs;
        private final Flag isKnown;
        private final Flag isActive;
        private final Flag isProvenActive;
        private final Flag isProvenInactive;
        private final Flag hasBeenActive;
        private final Flag hasBeenInactive;
        private final Flag isStuck;
        /** What was active at power-on or while warming up is somebody, but no start. */
        private final Flag mayRise;

        private final Timer proven;
        private final Timer warm;
        private final Timer stuck;
        private final Since changed;

        One(final Input input, final Layout layout) {
            name = input.name();
            isActiveHigh = input.activeLevel().isHigh();
            activeAfterNs = input.proving().activeAfter().toNanos();
            inactiveAfterNs = input.proving().inactiveAfter().toNanos();
            warmUpNs = input.proving().warmUp().toNanos();
            stuckAfterNs =
                    input.proving().stuckAfter().map(after -> after.toNanos()).orElse(-1L);
            final String place = "input." + name;
            isKnown = layout.flag(place + ".known");
            isActive = layout.flag(place + ".active");
            isProvenActive = layout.flag(place + ".proven-active");
            isProvenInactive = layout.flag(place + ".proven-inactive");
            hasBeenActive = layout.flag(place + ".has-been-active");
            hasBeenInactive = layout.flag(place + ".has-been-inactive");
            isStuck = layout.flag(place + ".is-stuck");
            mayRise = layout.flag(place + ".may-rise");
            proven = layout.timer(place + ".proven");
            warm = layout.timer(place + ".warm");
            stuck = layout.timer(place + ".stuck");
            changed = layout.since(place + ".changed");
        }

        void update(final RunState run, final Pins pins, final int index, final Image image) {
            final boolean active = pins.isHigh(index) == isActiveHigh;
            final boolean hadEdge = pins.hadEdge(index);
            if (!isKnown.is(run)) {
                isKnown.set(run, true);
                warm.start(run, warmUpNs);
                restart(run, active);
                mayRise.set(run, false);
            } else if (active != isActive.is(run) || hadEdge) {
                restart(run, active);
            }
            watchForStuck(run, active, image);
            image.sawActive[index] = active || hadEdge;
            image.sawInactive[index] = !active || hadEdge;
            believe(run, index, active, image);
            if (hadEdge && !active && activeAfterNs == 0 && isBelievable(run)) {
                image.rose[index] = true; // a pulse shorter than a scan counts (S7)
            }
        }

        private void restart(final RunState run, final boolean active) {
            isActive.set(run, active);
            changed.mark(run);
            mayRise.set(run, warm.isDue(run));
            proven.start(run, active ? activeAfterNs : inactiveAfterNs);
            if (active && stuckAfterNs >= 0) {
                stuck.start(run, stuckAfterNs);
            } else {
                stuck.stop(run);
            }
        }

        private void watchForStuck(final RunState run, final boolean active, final Image image) {
            final boolean now = stuck.isDue(run);
            if (now != isStuck.is(run)) {
                isStuck.set(run, now);
                image.note(new Event.InputDoubted(run.atNs(), name, now, active ? "active for too long" : "it moved"));
            }
        }

        private void believe(final RunState run, final int index, final boolean active, final Image image) {
            final boolean held = proven.isDue(run) && isBelievable(run);
            final boolean provenActive = held && active;
            final boolean provenInactive = held && !active;
            image.rose[index] = provenActive && !isProvenActive.is(run) && mayRise.is(run);
            image.fell[index] = provenInactive && !isProvenInactive.is(run);
            isProvenActive.set(run, provenActive);
            isProvenInactive.set(run, provenInactive);
            image.provenActive[index] = provenActive;
            image.provenInactive[index] = provenInactive;
            if (provenActive) {
                hasBeenActive.set(run, true);
            }
            if (provenInactive) {
                hasBeenInactive.set(run, true);
            }
            image.exercised[index] = hasBeenActive.is(run) && hasBeenInactive.is(run);
        }

        private boolean isBelievable(final RunState run) {
            return warm.isDue(run) && !isStuck.is(run);
        }

        private String observed(final RunState run) {
            if (!warm.isDue(run)) {
                return name + " is warming up";
            }
            if (isStuck.is(run)) {
                return name + " is stuck";
            }
            return name + " has been " + (isActive.is(run) ? "active" : "inactive");
        }
    }
}
