package slackwater.controller.guard;

import java.time.Duration;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.event.Refusal;

/** At most one member at a time; each counts until it has been at rest for the clear time (S12). */
final class ExclusionGuard implements Guard {
    private final Interlock.Exclusion exclusion;
    private final Places places;
    private final int[] members;
    private final Timer[] clears;
    private final Since[] began;
    private final long[] clearAfterNs;

    ExclusionGuard(final Interlock.Exclusion exclusion, final Places places, final Layout layout) {
        this.exclusion = exclusion;
        this.places = places;
        members = places.outputsHere(exclusion.outputs());
        clears = new Timer[members.length];
        began = new Since[members.length];
        clearAfterNs = new long[members.length];
        for (int i = 0; i < members.length; i++) {
            final Output member = places.outputs().get(members[i]);
            final String place = "exclusion." + exclusion.name() + "." + member.name();
            clears[i] = layout.timer(place + ".clears");
            began[i] = layout.since(place + ".began");
            // a bought prop goes on running by itself after its pulse
            final Duration runsOn = member.facts().duration("run-time").orElse(Duration.ZERO);
            clearAfterNs[i] = exclusion.clearAfter().plus(runsOn).toNanos();
        }
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return firstOther(run, image, output) < 0;
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        final int at = Math.max(0, firstOther(run, image, output));
        final String other = places.outputs().get(members[at]).name();
        final boolean isOn = image.energised[members[at]] || image.next[members[at]];
        final boolean isStarting = isOn && !image.energised[members[at]];
        return new Refusal(
                places.outputs().get(output).name(),
                exclusion.name(),
                isOn ? other + " has been energised" : other + " has not been clear long enough, begun",
                isStarting ? run.atNs() : began[at].atNs(run),
                other + " has been at rest for " + slackwater.model.event.Spans.text(clearAfterNs[at]));
    }

    @Override
    public void observe(final RunState run, final int output, final boolean isEnergised) {
        for (int i = 0; i < members.length; i++) {
            if (members[i] == output) {
                if (isEnergised) {
                    began[i].mark(run);
                    clears[i].stop(run);
                } else {
                    clears[i].start(run, clearAfterNs[i]);
                }
            }
        }
    }

    private int firstOther(final RunState run, final Image image, final int output) {
        for (int i = 0; i < members.length; i++) {
            final int member = members[i];
            final boolean counts = image.energised[member] || image.next[member] || clears[i].isRunning(run);
            if (member != output && counts) {
                return i;
            }
        }
        return -1;
    }
}
