package slackwater.controller.guard;

import slackwater.controller.image.Conditions;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.model.Interlock;
import slackwater.model.event.Refusal;

/**
 * When something gets scarce, the least important outputs go without first. An output counts its place in the whole list,
 * also where others before it are on another controller. Refuses starts only: a stroke begun is finished.
 */
final class ShedGuard implements Guard {
    private static final String RULE = "shed";

    private final Places places;
    private final Observations observations;
    private final Conditions needs;
    private final int[] members;
    private final Timer[] sheds;
    private final long[] shedAfterNs;
    private final Since scarce;

    ShedGuard(final Interlock.Shed shed, final Places places, final Observations observations, final Layout layout) {
        this.places = places;
        this.observations = observations;
        needs = places.conditions(shed.needs());
        members = places.outputsHere(shed.outputs());
        sheds = new Timer[members.length];
        shedAfterNs = new long[members.length];
        for (int i = 0; i < members.length; i++) {
            final String name = places.outputs().get(members[i]).name();
            sheds[i] = layout.timer("shed." + shed.name() + "." + name);
            shedAfterNs[i] =
                    shed.nextAfter().multipliedBy(shed.outputs().indexOf(name)).toNanos();
        }
        scarce = layout.since("shed." + shed.name());
    }

    /** Notices that something has become scarce or plenty; before the judging, so that guards stay pure. */
    @Override
    public void update(final RunState run, final Image image) {
        final boolean isPlenty = needs.areProven(image);
        for (int i = 0; i < sheds.length; i++) {
            if (isPlenty) {
                sheds[i].stop(run);
            } else if (!sheds[i].isStarted(run)) {
                sheds[i].start(run, shedAfterNs[i]);
                scarce.mark(run);
            }
        }
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return image.energised[output] || !isShed(run, output);
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        final int at = Math.max(0, needs.firstUnproven(image));
        final int input = needs.input(at);
        final String name = places.inputs().get(input).name();
        return new Refusal(
                places.outputs().get(output).name(),
                RULE,
                observations.observed(run, input),
                scarce.atNs(run),
                "the pressure has come back: " + name + " is proven "
                        + (needs.wantsActive(at) ? "active" : "inactive"));
    }

    private boolean isShed(final RunState run, final int output) {
        for (int i = 0; i < members.length; i++) {
            if (members[i] == output && sheds[i].isDue(run)) {
                return true;
            }
        }
        return false;
    }
}
