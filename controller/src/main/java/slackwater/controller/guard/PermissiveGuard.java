package slackwater.controller.guard;

import slackwater.controller.image.Conditions;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.RunState;
import slackwater.model.Begun;
import slackwater.model.Interlock;
import slackwater.model.event.Refusal;

/** Needs every condition proven; an input that is neither proven active nor inactive permits nothing. */
final class PermissiveGuard implements Guard {
    private final Interlock.Permissive permissive;
    private final Places places;
    private final Conditions needs;
    private final boolean finishes;
    private final Observations observations;

    PermissiveGuard(final Interlock.Permissive permissive, final Places places, final Observations observations) {
        this.permissive = permissive;
        this.places = places;
        this.observations = observations;
        needs = places.conditions(permissive.needs());
        finishes = permissive.begun() == Begun.FINISH;
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return needs.areProven(image) || (finishes && image.energised[output]);
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        final int at = Math.max(0, needs.firstUnproven(image));
        final int input = needs.input(at);
        return new Refusal(
                places.outputs().get(output).name(),
                permissive.name(),
                observations.observed(run, input),
                observations.sinceNs(run, input),
                places.inputs().get(input).name() + " is proven " + (needs.wantsActive(at) ? "active" : "inactive"));
    }
}
